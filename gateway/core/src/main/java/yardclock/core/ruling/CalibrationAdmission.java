package yardclock.core.ruling;

import yardclock.core.calibration.Calibrations;
import yardclock.core.calibration.Sitting;
import yardclock.core.course.SensorRef;
import yardclock.core.health.Unit;
import yardclock.core.health.UnitStatus;
import yardclock.core.time.Agreement;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** What speaks against beginning a calibration now, or against accepting one. Changes nothing. */
final class CalibrationAdmission {
    private final Calibrations calibrations;
    private final long basis;
    private final Set<Refusal> against = EnumSet.noneOf(Refusal.class);

    CalibrationAdmission(Calibrations calibrations, long basis) {
        this.calibrations = calibrations;
        this.basis = basis;
    }

    Set<Refusal> against(Act act) {
        if (act.kind() == ActKind.BEGIN_CALIBRATION) {
            begin((Act.BeginCalibration) act);
        } else {
            end((Act.EndCalibration) act);
        }
        return against;
    }

    private void refuseIf(boolean holds, Refusal refusal) {
        if (holds) {
            against.add(refusal);
        }
    }

    private void begin(Act.BeginCalibration act) {
        SensorRef reference = new SensorRef(act.referenceUnit(), act.referenceSensor());
        SensorRef other = new SensorRef(act.unit(), act.sensor());
        refuseIf(calibrations.sitting().isPresent(), Refusal.ALREADY_CALIBRATING);
        sensor(reference);
        sensor(other);
        refuseIf(Objects.equals(reference.unit(), other.unit()), Refusal.SAME_UNIT);
        if (against.isEmpty()) {
            boolean isRing = calibrations.isRing(reference.unit(), other.unit());
            refuseIf(isRing, Refusal.CALIBRATED_IN_A_RING);
            refuseIf(!calibrations.isClear(reference, other), Refusal.STATION_AWAITS);
        }
    }

    private void sensor(SensorRef sensor) {
        Optional<Unit> unit = calibrations.unit(sensor.unit());
        refuseIf(unit.isEmpty(), Refusal.UNKNOWN_UNIT);
        if (unit.isPresent()) {
            boolean isWired =
                    unit.get().plan().sensors().stream()
                            .anyMatch(s -> s.number() == sensor.sensor());
            refuseIf(!isWired || sensor.isOutput(), Refusal.UNKNOWN_SENSOR);
            refuseIf(!isReady(unit.get()), Refusal.UNIT_NOT_READY);
        }
    }

    private static boolean isReady(Unit unit) {
        String boot = unit.status().boot();
        return unit.status().status() == UnitStatus.Status.UP
                && !boot.isEmpty()
                && unit.isCompared(boot);
    }

    private void end(Act.EndCalibration act) {
        Sitting sitting = calibrations.sitting().orElse(null);
        refuseIf(sitting == null, Refusal.NOT_CALIBRATING);
        if (sitting == null || !act.accept()) {
            return;
        }
        refuseIf(basis >= 0 && basis != calibrations.revision(), Refusal.OUT_OF_DATE);
        refuseIf(sitting.change().isPresent(), Refusal.UNIT_CHANGED);
        sitting.objection().map(CalibrationAdmission::refusal).ifPresent(against::add);
    }

    private static Refusal refusal(Agreement.Objection objection) {
        return switch (objection) {
            case TOO_FEW -> Refusal.TOO_FEW_TRIPS;
            case TOO_SCATTERED -> Refusal.TOO_SCATTERED;
            case UNSETTLED -> Refusal.STILL_UNSETTLED;
            case CONTRADICTED -> Refusal.LIMITS_EXCLUDE;
        };
    }
}
