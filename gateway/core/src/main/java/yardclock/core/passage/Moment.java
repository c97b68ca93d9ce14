package yardclock.core.passage;

/**
 * An edge at which a trigger's contacts reached what it asks for, before the guards.
 *
 * @param index its place in the list of edges it was found in
 * @param first the place of the first edge that had a part in it
 * @param last the place of the last one: not the stamp's own where the first contact stamps
 * @param otherStateMicros how long its sensor had been in the other state before: how long a mat
 *     was stood on before its release, how long a beam was clear before it was blocked again
 */
record Moment(TimedEdge edge, int index, int first, int last, long otherStateMicros) {
    /** The sensor was not heard of before in this turn; it may have stood so for ever. */
    static final long SINCE_EVER = Long.MAX_VALUE / 4;
}
