package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import yardclock.app.pins.SignalPattern.Sound;

import java.util.Set;

/** What is lit, and what is heard, in every state; times in milliseconds. */
class SignalPatternTest {
    private static final long MILLI = 1_000_000;
    private static final YardSignal RUNS = new YardSignal(false, false, 0);
    private static final YardSignal HELD = new YardSignal(false, true, 0);
    private static final YardSignal STOPPED = new YardSignal(true, true, 0);

    @Test
    void whileTheCourseRunsRunAndReleaseHavePowerAndTheHornIsQuiet() {
        assertThat(on(RUNS, Sound.NONE, 0))
                .containsExactlyInAnyOrder(
                        OutputJob.RUN, OutputJob.RELEASE, OutputJob.HEAT, OutputJob.QUIET);
    }

    @Test
    void aHoldTakesThePowerFromTheReleaseLampAndAStopFromRunToo() {
        assertThat(on(HELD, Sound.NONE, 0))
                .contains(OutputJob.RUN)
                .doesNotContain(OutputJob.RELEASE);
        assertThat(on(STOPPED, Sound.NONE, 0))
                .doesNotContain(OutputJob.RUN, OutputJob.RELEASE, OutputJob.PULSE);
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 0", "0, 1, 6000", "1, 1, 500", "2, 2, 1000", "3, 3, 1500", "4, 4, 2000"})
    void aLevelIsAsManyBlinksNoneIsNotKnownAndSteadyIsNormal(int level, int rows, int litMillis) {
        YardSignal signal = new YardSignal(false, false, level);
        int risen = 0;
        int lit = 0;
        boolean was = false;
        for (int millis = 0; millis < 6_000; millis += 10) {
            boolean is = on(signal, Sound.NONE, millis).contains(OutputJob.HEAT);
            risen += is && !was ? 1 : 0;
            lit += is ? 10 : 0;
            was = is;
        }
        assertThat(risen).isEqualTo(rows);
        assertThat(lit).isEqualTo(litMillis);
    }

    @Test
    void aStopIsHeardForEightSeconds() {
        assertThat(heard(next(Sound.NONE, RUNS, STOPPED, 0), 12_000)).isEqualTo("1x8000");
    }

    @Test
    void aHoldIsHeardOnceForASecond() {
        assertThat(heard(next(Sound.NONE, RUNS, HELD, 0), 12_000)).isEqualTo("1x1000");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void aLevelThatRisesIsHeardAsOftenAsItsNumber(int level) {
        YardSignal risen = new YardSignal(false, false, level);
        assertThat(heard(next(Sound.NONE, RUNS, risen, 0), 12_000)).isEqualTo(level + "x400");
    }

    @Test
    void aLevelThatFallsAndOneThatIsNotKnownAnyMoreAreNotHeard() {
        YardSignal three = new YardSignal(false, true, 3);
        YardSignal two = new YardSignal(false, true, 2);
        YardSignal unknown = new YardSignal(false, true, -1);
        assertThat(next(Sound.NONE, three, two, 0)).isEqualTo(Sound.NONE);
        assertThat(next(Sound.NONE, three, unknown, 0)).isEqualTo(Sound.NONE);
    }

    @Test
    void theFirstLookOfAllIsHeardOnlyWhereEverybodyIsStopped() {
        assertThat(next(Sound.NONE, null, HELD, 0)).isEqualTo(Sound.NONE);
        assertThat(heard(next(Sound.NONE, null, STOPPED, 0), 12_000)).isEqualTo("1x8000");
    }

    @Test
    void aStopBreaksOffAHoldsSoundAndNothingBreaksOffAStops() {
        Sound hold = next(Sound.NONE, RUNS, HELD, 0);
        Sound stop = next(hold, HELD, STOPPED, 500);
        assertThat(stop.reason()).isEqualTo(Sound.Reason.STOP);
        YardSignal hotter = new YardSignal(true, true, 4);
        assertThat(next(stop, STOPPED, hotter, 1_000)).isEqualTo(stop);
    }

    @Test
    void aRestartEndsTheStopsSound() {
        Sound stop = next(Sound.NONE, RUNS, STOPPED, 0);
        assertThat(next(stop, STOPPED, HELD, 3_000)).isEqualTo(Sound.NONE);
    }

    private static Sound next(Sound sound, YardSignal before, YardSignal now, long millis) {
        return SignalPattern.next(sound, before, now, millis * MILLI);
    }

    private static Set<OutputJob> on(YardSignal signal, Sound sound, long millis) {
        return SignalPattern.energised(signal, sound, millis * MILLI);
    }

    /** How many times the horn sounds, and for how long each; it sounds without power. */
    private static String heard(Sound sound, int untilMillis) {
        int sounds = 0;
        int total = 0;
        boolean was = false;
        for (int millis = 0; millis < untilMillis; millis += 10) {
            boolean is = !on(RUNS, sound, millis).contains(OutputJob.QUIET);
            sounds += is && !was ? 1 : 0;
            total += is ? 10 : 0;
            was = is;
        }
        return sounds + "x" + total / sounds;
    }
}
