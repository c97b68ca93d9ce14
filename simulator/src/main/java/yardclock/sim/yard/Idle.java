package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

/**
 * What a candidate who is kept waiting does to a sensor.
 *
 * @param fromMicros since the waiting began
 * @param lastsMicros how long the sensor is blocked
 */
public record Idle(SensorRef sensor, long fromMicros, long lastsMicros) {}
