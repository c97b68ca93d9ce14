package yardclock.sim.clockbench;

/**
 * What a radio link goes through, and how the sun treats a crystal. The figures are the design's
 * own assumptions about a drill yard, not measurements.
 *
 * @param goodSeconds mean length of a stretch in which messages come through quickly
 * @param badSeconds mean length of a stretch in which most are late
 * @param outageSeconds mean time between two outages
 * @param powerSave how likely a message to the unit waits for the next beacon
 * @param ramp how much the rate moves when sun and shade change, parts per one
 */
public record Weather(
        String name,
        double goodSeconds,
        double badSeconds,
        double outageSeconds,
        double powerSave,
        double ramp) {
    public static final Weather BURSTY = new Weather("bursty", 60, 8, 600, 0, 0);
    public static final Weather POWER_SAVE = new Weather("power save", 60, 8, 600, 0.85, 0);
    public static final Weather HOSTILE = new Weather("hostile", 20, 10, 300, 0.5, 3e-6);
}
