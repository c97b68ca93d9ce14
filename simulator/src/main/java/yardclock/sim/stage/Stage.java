package yardclock.sim.stage;

/**
 * Exam time and the thread of the simulated yard.
 *
 * <p>Exam time counts microseconds from the stage's beginning and runs {@link #speed()} times as
 * fast as real time. {@link #nowMicros}, {@link #at} and {@link #soon} may be called from any
 * thread; the acts run on the stage's own.
 */
public interface Stage {
    long nowMicros();

    int speed();

    /** Runs an act at an instant of exam time, or at once when that has passed. */
    Planned at(long examMicros, Runnable act);

    /** Runs an act after everything that is already due. */
    default Planned soon(Runnable act) {
        return at(nowMicros(), act);
    }

    default Planned afterMicros(long examMicros, Runnable act) {
        return at(nowMicros() + examMicros, act);
    }

    /** For links and retries, which run in real time at every speed. */
    default Planned afterRealMillis(long millis, Runnable act) {
        return at(nowMicros() + millis * 1_000 * speed(), act);
    }

    /** An act that was planned and can still be dropped. */
    interface Planned {
        void drop();
    }
}
