package yardclock.core.calibration;

import yardclock.core.course.SensorRef;
import yardclock.core.health.Circumstances;

/**
 * One accepted comparison: by how much one unit's uncorrected estimates lie after another's.
 *
 * @param reference the sensor of the unit compared with, and what that unit was then
 * @param medianMicros the median lead of {@code other}
 * @param spreadMicros scatter of one pair, by final stamps
 * @param stampedSpreadMicros scatter of one pair, by the stamps made at arrival
 * @param referenceWidthMicros usual guaranteed width of the reference's stamps then
 * @param otherWidthMicros the same of the other's
 * @param kept pairs that counted
 * @param rejected pairs that did not
 * @param sinceMicros gateway time of the acceptance
 */
public record Calibration(
        SensorRef reference,
        Circumstances referenceThen,
        SensorRef other,
        Circumstances otherThen,
        long medianMicros,
        long spreadMicros,
        long stampedSpreadMicros,
        long referenceWidthMicros,
        long otherWidthMicros,
        int kept,
        int rejected,
        long sinceMicros) {

    /** One that stands no more: whose change ended it, what changed, and when it was noticed. */
    public record Ended(
            Calibration calibration, String unit, Circumstances.Change why, long atMicros) {}
}
