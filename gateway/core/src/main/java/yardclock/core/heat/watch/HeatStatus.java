package yardclock.core.heat.watch;

import java.util.List;

/**
 * What people are told at one instant.
 *
 * @param level 0 to 4, or −1 for unknown
 * @param was the level that readings had given last; −1 before the first
 * @param floor the level to act by: never under 1 while unknown
 * @param confirmation whether a steep rise still wants a second reading
 * @param suspicions against the sensor of the newest reading
 */
public record HeatStatus(
        int level,
        int was,
        int floor,
        Freshness freshness,
        Confirmation confirmation,
        boolean isLightning,
        List<Suspicion> suspicions) {

    /** How old what is known is. */
    public enum Freshness {
        /** No reading was taken yet. */
        NONE,
        FRESH,
        /** The next reading is due. */
        AGEING,
        /** It is due twice over: the level is unknown. */
        UNKNOWN,
        /** Unknown, and for an hour no reading: nobody new is released. */
        SILENT
    }

    /** What a rise by more than two levels at once still wants. */
    public enum Confirmation {
        NONE,
        /** A second reading, within five minutes. */
        TO_BE_CONFIRMED,
        /** None came: a reading by hand. */
        HAND_READING_ASKED
    }

    public boolean isUnknown() {
        return level < 0;
    }
}
