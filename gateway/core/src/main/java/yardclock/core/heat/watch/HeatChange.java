package yardclock.core.heat.watch;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

/**
 * One entry of the shown history. Written once.
 *
 * @param number counted from 1
 * @param reading the newest reading shown at that instant; null before the first
 * @param figures what it says; null before the first
 * @param boundsVersion the bounds in force
 */
public record HeatChange(
        int number,
        long atMicros,
        HeatStatus status,
        HeatReading reading,
        ReadingLevel figures,
        String boundsVersion) {

    /** Somebody has seen a change, by its number. */
    public record Acknowledgement(int change, String person, long atMicros) {}
}
