package yardclock.sim.tablets;

import yardclock.sim.stage.Stage;
import yardclock.sim.units.TickClock;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * The clock of a page on a tablet: ticks on a crystal that is a little off, from a start of its
 * own. A page that is loaded anew, or comes back into view, starts again under another name. Safe
 * from any thread.
 *
 * <p>Ticks are microseconds of exam time, as pages count them at a speed.
 */
public final class PageClock {
    private static final long FASTEST_PARTS_PER_BILLION = 40_000;
    private static final long OPEN_BEFORE_MICROS = 60_000_000;
    private static final long SHORTEST_MICROS = 600_000_000;
    private static final long LONGEST_MICROS = 2_400_000_000L;

    private final Stage stage;
    private final SplittableRandom random;
    private final long ratePartsPerBillion;
    private final Supplier<String> boots;
    private volatile Start start;

    private record Start(String boot, TickClock ticks) {}

    /** One look at the clock. */
    public record Reading(String boot, long tick) {}

    /** Its boots have names never used before: two days with one seed are not one day. */
    public PageClock(Stage stage, long seed) {
        this(stage, seed, () -> HexFormat.of().toHexDigits(new SecureRandom().nextLong()));
    }

    /**
     * @param boots names for its boots, each different from all others
     */
    public PageClock(Stage stage, long seed, Supplier<String> boots) {
        this.stage = stage;
        this.boots = boots;
        this.random = new SplittableRandom(seed);
        long rate = random.nextLong(-FASTEST_PARTS_PER_BILLION, FASTEST_PARTS_PER_BILLION);
        this.ratePartsPerBillion = rate;
        startAt(stage.nowMicros() - random.nextLong(OPEN_BEFORE_MICROS));
    }

    private void startAt(long examMicros) {
        start = new Start(boots.get(), new TickClock(examMicros, ratePartsPerBillion));
    }

    /** The page is loaded anew now. */
    void restart() {
        startAt(stage.nowMicros());
    }

    /** Lets the page be loaded anew now and then, as the seed says; on the stage. */
    void restartNowAndThen(Runnable afterEach) {
        long next = random.nextLong(SHORTEST_MICROS, LONGEST_MICROS);
        stage.afterMicros(
                next,
                () -> {
                    restart();
                    afterEach.run();
                    restartNowAndThen(afterEach);
                });
    }

    public Reading read() {
        Start now = start;
        return new Reading(now.boot(), now.ticks().tickAt(stage.nowMicros()));
    }
}
