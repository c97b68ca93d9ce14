package yardclock.core.fact;

/**
 * What the engine asks the world to do. Released only after the journal's commit; repeating one
 * does no harm.
 */
public sealed interface Effect {
    /** Tell a unit which edges it may drop: all of this boot up to and including {@code upto}. */
    record Kept(String unit, String boot, long upto) implements Effect {}

    /** Ask a unit to send edges again, both ends included. */
    record AskAgain(String unit, String boot, long from, long to) implements Effect {}

    /**
     * Show something at a unit: the output answers with an edge of its own number.
     *
     * @param what ready, start, done or stop
     */
    record Show(String unit, int output, String what, int expiresMillis) implements Effect {}

    /** Make a unit blink. */
    record Blink(String unit, int seconds) implements Effect {}
}
