package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

/**
 * One change of one sensor.
 *
 * @param offsetMicros from the start of the station, in exam time; negative before it
 * @param bounce whether it is mere chatter beside a true change
 */
public record Move(long offsetMicros, SensorRef sensor, int state, boolean bounce) {}
