package yardclock.sim.twin;

/** What kind of day is played. */
public enum Scenario {
    /** Sensors chatter, and that is all. */
    KIND,
    /** Everything of {@link yardclock.sim.rough}. */
    ROUGH
}
