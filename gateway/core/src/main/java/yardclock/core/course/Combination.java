package yardclock.core.course;

/** How a trigger's contacts belong together. */
public enum Combination {
    /** One contact. */
    SINGLE,
    /** Every contact in its state at the same time; the last to get there stamps. */
    ALL_OF,
    /**
     * Every contact blocked together, as all of them; and where the guard says so, the later within
     * its time: what is large enough to cut both beams at once, and nothing that cuts one.
     */
    COINCIDENCE,
    /** Whichever contact comes first stamps. */
    ANY_OF,
    /** The contacts reach their states in the written order; the last one stamps. */
    SEQUENCE,
    /** As a sequence, and all within the guard's time: the way someone walks through two beams. */
    DIRECTION,
    /** The unit's own output: horn or light. The output's edge stamps. */
    SIGNAL,
    /** A proctor's press, on the tablet or on a wired button among the contacts. */
    JUDGED
}
