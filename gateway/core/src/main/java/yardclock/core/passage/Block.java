package yardclock.core.passage;

/**
 * A stretch of time in which a sensor was in one state.
 *
 * @param from the edge that began it; null when it was so before anything was heard
 * @param until the edge that ended it; null while it lasts
 */
public record Block(TimedEdge from, TimedEdge until) {
    public boolean isOver() {
        return until != null;
    }

    /** How long it lasted, as stamped; very long where a beginning or an end is not known. */
    public long micros() {
        return from == null || until == null
                ? Moment.SINCE_EVER
                : until.stamp().micros() - from.stamp().micros();
    }
}
