package yardclock.core.engine;

import yardclock.core.board.CalibrationView;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Verdict;

import java.util.Random;

/**
 * A yard whose units answer over lopsided paths, and a technician who trips two sensors at once.
 *
 * <p>Unit u3's messages take 2 ms there and 2 ms back; u7's take 5 ms there and 1 ms back, so that
 * its clock seems 2 ms wrong and no exchange can say so.
 */
public final class CalibrationBench {
    private static final long SECOND = 1_000_000;
    private final Yard yard;
    private final Random random;

    public CalibrationBench(Yard yard, long seed) {
        this.yard = yard;
        this.random = new Random(seed);
    }

    /** A yard in which both units have been compared for a good while. */
    public static CalibrationBench open(long seed) {
        CalibrationBench bench = new CalibrationBench(Yard.begun(new TestPlan().make(), 1), seed);
        bench.yard.at(1);
        bench.health("u3").health("u7");
        bench.compare(60);
        return bench;
    }

    public Yard yard() {
        return yard;
    }

    public CalibrationBench health(String unit) {
        yard.health(unit);
        return this;
    }

    /** Exchanges every 5 s for so long, up to now. */
    public CalibrationBench compare(double seconds) {
        for (double end = yard.now() + seconds; yard.now() + 5 <= end; ) {
            yard.after(5);
            exchange();
        }
        return this;
    }

    private void exchange() {
        long sent = Math.round(yard.now() * SECOND) - 8_000;
        yard.take(yard.unit("u3").exchange(sent, 2_000 + waited(), 2_000 + waited()));
        yard.take(yard.unit("u7").exchange(sent + 500, 5_000 + waited(), 1_000 + waited()));
    }

    /** Now and then a message is quick; mostly it waits a little. */
    private long waited() {
        return random.nextInt(3) == 0 ? random.nextInt(30) : random.nextInt(4_000);
    }

    /** Trips u3/1 and u7/1 so many times together, 6 s apart, with exchanges in between. */
    public CalibrationBench trips(int times) {
        for (int i = 0; i < times; i++) {
            trip(0);
        }
        return this;
    }

    /** One trip of both, the second one so much later. */
    public CalibrationBench trip(double laterSeconds) {
        yard.after(3);
        yard.edge("u3/1", 1);
        yard.after(laterSeconds);
        yard.edge("u7/1", 1);
        yard.after(0.7);
        yard.edge("u3/1", 0);
        yard.edge("u7/1", 0);
        yard.after(2.3);
        exchange();
        health("u3").health("u7");
        return this;
    }

    public CalibrationBench begin() {
        yard.ok("technician1", new Act.BeginCalibration("u3", 1, "u7", 1));
        return this;
    }

    /** The second unit restarts in the middle. */
    public CalibrationBench spoilt() {
        trips(3);
        yard.unit("u7").reboot(Math.round(yard.now() * SECOND));
        return health("u7");
    }

    /** Trips that a hand makes one after the other, now later, now sooner. */
    public CalibrationBench scattered() {
        for (int i = 0; i < 28; i++) {
            trip(i * 0.000_25);
        }
        return this;
    }

    /**
     * For a minute u7's messages are as quick there as back: what was stamped before looks wrong.
     */
    public CalibrationBench pathMends() {
        for (int i = 0; i < 12; i++) {
            yard.after(5);
            long sent = Math.round(yard.now() * SECOND) - 8_000;
            yard.take(yard.unit("u7").exchange(sent, 1_000, 1_000));
            health("u3").health("u7");
        }
        return this;
    }

    /** Makes u6 a pin of the gateway's own board, whose exchanges take no time. */
    public CalibrationBench withPin() {
        for (int i = 0; i < 12; i++) {
            yard.after(5);
            comparePin();
        }
        return health("u3").health("u6").health("u7");
    }

    /** Begins with the first sensors of two units, and trips both 22 times. */
    public CalibrationBench tripped(String reference, String other) {
        yard.ok("technician1", new Act.BeginCalibration(reference, 1, other, 1));
        for (int i = 0; i < 22; i++) {
            yard.after(6);
            yard.edge(reference + "/1", 1);
            yard.edge(other + "/1", 1);
            yard.after(0.5);
            yard.edge(reference + "/1", 0);
            yard.edge(other + "/1", 0);
            exchange();
            comparePin();
        }
        return this;
    }

    private void comparePin() {
        yard.take(yard.unit("u6").exchange(Math.round(yard.now() * SECOND), 0, 0));
    }

    public Verdict end(boolean accept) {
        return yard.rule("technician1", new Act.EndCalibration(accept), view().revision());
    }

    /** Twenty-two good trips and two bad ones, accepted. */
    public CalibrationBench calibrated() {
        begin().trips(7).trip(0.05).trips(9).trip(0.02).trips(6);
        Verdict verdict = end(true);
        if (!verdict.isAccepted()) {
            throw new AssertionError(verdict.refusal() + " " + view());
        }
        return this;
    }

    public CalibrationView view() {
        return yard.engine().bench(yard.view()).calibrations();
    }
}
