package yardclock.core.board;

import yardclock.core.calibration.Calibration;
import yardclock.core.calibration.Calibrations;
import yardclock.core.calibration.Sitting;
import yardclock.core.time.Agreement;
import yardclock.core.time.Correction;

import java.util.Locale;
import java.util.Optional;

/** Draws the calibrations for the bench. */
final class CalibrationProjection {
    private final Calibrations calibrations;

    CalibrationProjection(Calibrations calibrations) {
        this.calibrations = calibrations;
    }

    CalibrationView view() {
        return new CalibrationView(
                calibrations.revision(),
                Agreement.PAIRS_LEAST,
                calibrations.sitting().map(CalibrationProjection::sitting).orElse(null),
                calibrations.standing().stream().map(this::standing).toList(),
                calibrations.ended().stream().map(CalibrationProjection::ended).toList());
    }

    private static CalibrationView.SittingView sitting(Sitting sitting) {
        Agreement says = sitting.agreement();
        Optional<String> changed = sitting.change().map(CalibrationProjection::word);
        return new CalibrationView.SittingView(
                sitting.reference().toString(),
                sitting.other().toString(),
                sitting.beganMicros(),
                sitting.referenceTrips(),
                sitting.otherTrips(),
                says.kept(),
                says.pairs().stream().map(CalibrationProjection::pair).toList(),
                says.medianMicros(),
                says.spreadMicros(),
                says.uncertaintyMicros(),
                changed.or(() -> sitting.objection().map(CalibrationProjection::word)).orElse(""),
                sitting.changedUnit());
    }

    private static CalibrationView.Pair pair(Agreement.Judged judged) {
        return new CalibrationView.Pair(
                judged.pair().reference().micros(),
                judged.pair().differenceMicros(),
                word(judged.standing()));
    }

    private CalibrationView.Standing standing(Calibration calibration) {
        String unit = calibration.other().unit();
        Correction correction = calibrations.correction(unit).orElseThrow();
        return new CalibrationView.Standing(
                calibration.reference().toString(),
                calibration.other().toString(),
                calibrations.root(unit),
                calibration.medianMicros(),
                calibration.spreadMicros(),
                correction.micros(),
                correction.declaredMicros(),
                calibration.kept(),
                calibration.rejected(),
                calibration.sinceMicros());
    }

    private static CalibrationView.Ended ended(Calibration.Ended ended) {
        return new CalibrationView.Ended(
                ended.calibration().reference().toString(),
                ended.calibration().other().toString(),
                ended.unit(),
                word(ended.why()),
                ended.calibration().medianMicros(),
                ended.calibration().sinceMicros(),
                ended.atMicros());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
