package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

/**
 * One change that a body makes at one sensor.
 *
 * @param offsetMicros from the start of the station, in exam time; negative before it
 * @param bounce whether it is mere chatter beside a true change
 * @param missed whether the sensor fails to answer, if the change would show at all
 */
public record Move(
        long offsetMicros,
        SensorRef sensor,
        int state,
        boolean bounce,
        Cause cause,
        boolean missed) {
    /** A candidate's own, which the sensor answers. */
    public Move(long offsetMicros, SensorRef sensor, int state, boolean bounce) {
        this(offsetMicros, sensor, state, bounce, Cause.OWN, false);
    }

    public Move unseen() {
        return new Move(offsetMicros, sensor, state, bounce, cause, true);
    }
}
