package yardclock.core.ruling;

import yardclock.core.calibration.Calibrations;
import yardclock.core.course.SensorRef;
import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.proof.Proofs;
import yardclock.core.run.CourseRun;
import yardclock.core.trouble.SensorWatch;

import java.util.function.LongUnaryOperator;
import java.util.function.ToIntFunction;

/**
 * What a decision is judged against.
 *
 * @param sensorState present state of a sensor, −1 while unknown
 * @param wall what the wall clock read at a gateway time, for people only
 */
public record Situation(
        CourseRun course,
        Devices devices,
        ToIntFunction<SensorRef> sensorState,
        Calibrations calibrations,
        SensorWatch watch,
        Proofs proofs,
        HeatWatch heat,
        LongUnaryOperator wall) {}
