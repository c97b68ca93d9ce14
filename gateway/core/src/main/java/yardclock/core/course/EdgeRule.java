package yardclock.core.course;

/** Which edge of a passage stamps it. A block is a stretch of time a sensor is in one state. */
public enum EdgeRule {
    /** The edge at which the contact first reaches its state. */
    FIRST,
    /** Of the blocks that were merged into one passage, the beginning of the longest. */
    START_OF_LONGEST,
    /** The end of the last block: the contact's state is the one it returns to. */
    RELEASE
}
