package yardclock.core.ruling;

import yardclock.core.engine.CalibrationBench;
import yardclock.core.engine.Walk;

/** How a calibration comes to be refused, each way. */
final class CalibrationRefusals {
    private CalibrationRefusals() {}

    static Verdict beginning(Refusal refusal) {
        CalibrationBench bench = CalibrationBench.open(3);
        switch (refusal) {
            case STATION_AWAITS -> new Walk(bench.yard(), 101, "proctor1").release();
            case CALIBRATED_IN_A_RING -> bench.calibrated();
            case ALREADY_CALIBRATING -> bench.begin();
            default -> {}
        }
        Act begin =
                switch (refusal) {
                    case UNKNOWN_SENSOR -> new Act.BeginCalibration("u3", 5, "u7", 1);
                    case SAME_UNIT -> new Act.BeginCalibration("u3", 1, "u3", 2);
                    case UNIT_NOT_READY -> new Act.BeginCalibration("u3", 1, "u2", 1);
                    case CALIBRATED_IN_A_RING -> new Act.BeginCalibration("u7", 1, "u3", 1);
                    default -> new Act.BeginCalibration("u3", 1, "u7", 1);
                };
        return bench.yard().rule("technician1", begin);
    }

    static Verdict accepting(Refusal refusal) {
        CalibrationBench bench = CalibrationBench.open(3);
        switch (refusal) {
            case UNIT_CHANGED -> bench.begin().spoilt();
            case TOO_FEW_TRIPS -> bench.begin().trips(2);
            case TOO_SCATTERED -> bench.begin().scattered();
            case STILL_UNSETTLED -> bench.begin().trips(22).pathMends();
            case LIMITS_EXCLUDE -> bench.withPin().tripped("u7", "u6");
            default -> {}
        }
        return bench.end(true);
    }
}
