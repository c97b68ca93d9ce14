package yardclock.app.lane;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Outcome;

/** What the lane tells about itself, for metrics. Called on the lane's thread; must be quick. */
public interface LaneMeter {
    /** A batch of so many entries was committed; the commit took so long in real time. */
    default void committed(int entries, long realNanos) {}

    /** A batch could not be kept. */
    default void lost(int entries) {}

    default void applied(Entry entry, Outcome outcome) {}

    /**
     * Frames were drawn.
     *
     * @param realNanos from the moment the oldest edge they include was handed in until they were
     *     drawn; −1 when they include no new edge
     */
    default void drawn(long realNanos) {}

    /** A meter that measures nothing. */
    static LaneMeter none() {
        return new LaneMeter() {};
    }
}
