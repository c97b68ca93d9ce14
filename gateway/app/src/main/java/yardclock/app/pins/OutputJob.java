package yardclock.app.pins;

import java.util.Locale;

/** What a line of this board drives. Every one is dark, or silent in its own way, without power. */
public enum OutputJob {
    /** Changes about once a second while the gateway could stop everybody; for the dead-man. */
    PULSE,
    /** Energised while nobody is stopped; the stop lamp hangs on its resting contact. */
    RUN,
    /** A lamp: lit while new releases are possible. */
    RELEASE,
    /** A lamp: steady at level 0, as many blinks as the level, dark while it is unknown. */
    HEAT,
    /** Energised while the horn is quiet. */
    QUIET;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
