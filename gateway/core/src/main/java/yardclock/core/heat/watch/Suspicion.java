package yardclock.core.heat.watch;

/**
 * Why a sensor is not believed. A suspect reading may raise the level; it lowers none, and the next
 * reading is due as if it had not come.
 */
public enum Suspicion {
    /** Over 32 °C of dew point: hardly anywhere on earth, so look at the humidity. */
    DEW_POINT,
    /** Ten times the very same values. */
    STUCK,
    /** The air warmed by more than 2 °C within 10 minutes and its vapour did not change. */
    IN_THE_SUN
}
