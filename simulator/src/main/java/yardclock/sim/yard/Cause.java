package yardclock.sim.yard;

import java.util.Locale;

/** Who or what changes a sensor. Bodies of different causes superpose. */
public enum Cause {
    /** The candidate's own body and what the plan means by it. */
    OWN,
    /** An end of what is carried, ahead of the body. */
    LOAD,
    /** The proctor who walks beside. */
    PROCTOR,
    /** The next candidate, who stands about while the station is not ready. */
    WAITING,
    /** A dog, a passer-by, a gust of paper. */
    STRAY,
    /** Equipment that was knocked. */
    JOSTLE,
    /** The crew, who put things back. */
    CREW;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
