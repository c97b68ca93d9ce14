package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PulseTest {
    private static final long MILLI = 1_000_000;

    private final Pulse pulse = new Pulse();
    private int rises;
    private boolean wasHigh;

    @Test
    void oneLookIsOnePulseOfATenthOfASecond() {
        assertThat(at(0, true, true)).isTrue();
        assertThat(at(99, false, true)).isTrue();
        assertThat(at(100, false, true)).isFalse();
        assertThat(at(60_000, false, true)).isFalse();
    }

    @Test
    void aBusyLanesLooksMakeNoMoreThanAPulseInNineTenthsOfASecond() {
        for (int millis = 0; millis < 9_000; millis += 20) {
            at(millis, millis % 100 == 0, true);
        }
        assertThat(rises).isEqualTo(10);
    }

    @Test
    void anIdleLanesLooksMakeAPulseEach() {
        for (int millis = 0; millis < 10_000; millis += 20) {
            at(millis, millis % 1_000 == 0, true);
        }
        assertThat(rises).isEqualTo(10);
    }

    @Test
    void withoutALookNothingRisesHoweverLongItRuns() {
        at(0, true, true);
        for (int millis = 20; millis < 60_000; millis += 20) {
            at(millis, false, true);
        }
        assertThat(rises).isEqualTo(1);
    }

    @Test
    void whileNothingMayRunALookMakesNoPulseAndAfterItTheNextDoes() {
        for (int millis = 0; millis < 5_000; millis += 20) {
            at(millis, millis % 100 == 0, false);
        }
        assertThat(rises).isZero();
        assertThat(at(5_000, true, true)).isTrue();
    }

    private boolean at(long millis, boolean isLooked, boolean mayRun) {
        boolean isHigh = pulse.at(isLooked, mayRun, millis * MILLI);
        rises += isHigh && !wasHigh ? 1 : 0;
        wasHigh = isHigh;
        return isHigh;
    }
}
