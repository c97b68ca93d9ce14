package yardclock.core.ruling;

import yardclock.core.course.Station;
import yardclock.core.proof.ProofPoint;
import yardclock.core.proof.ProofRun;
import yardclock.core.proof.Proofs;
import yardclock.core.run.Movements;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What speaks against an act of a proof run now. Changes nothing. */
final class ProofAdmission {
    private final Situation situation;
    private final Proofs proofs;
    private final Devices.Holder who;
    private final long basis;
    private final long nowMicros;
    private final Set<Refusal> against = EnumSet.noneOf(Refusal.class);

    ProofAdmission(Situation situation, Devices.Holder who, long basis, long nowMicros) {
        this.situation = situation;
        this.proofs = situation.proofs();
        this.who = who;
        this.basis = basis;
        this.nowMicros = nowMicros;
    }

    /** Whether an act must wait until a proof run is over. */
    static boolean isInTheWay(Act act, Proofs proofs) {
        return switch (act.kind()) {
            case BEGIN_CALIBRATION, ADJUST_TRIGGER -> proofs.underWay().isPresent();
            case RUN_STATION_AGAIN -> proofs.proves(((Act.RunStationAgain) act).station());
            default -> false;
        };
    }

    Set<Refusal> against(Act act) {
        switch (act.kind()) {
            case BEGIN_PROOF_RUN -> begin((Act.BeginProofRun) act);
            case PROOF_TAP -> tap((Act.ProofTap) act);
            case PROOF_SIGNAL -> signal();
            case SIGN_PROOF_RUN -> sign((Act.SignProofRun) act);
            case END_PROOF_RUN -> end(((Act.EndProofRun) act).words());
            default -> throw new IllegalArgumentException("no act of a proof run: " + act);
        }
        return against;
    }

    private void refuseIf(boolean holds, Refusal refusal) {
        if (holds) {
            against.add(refusal);
        }
    }

    private void begin(Act.BeginProofRun act) {
        String station = ProofActs.station(act);
        boolean isKnown = station.isEmpty() || situation.course().station(station).isPresent();
        refuseIf(!isKnown, Refusal.UNKNOWN_STATION);
        refuseIf(proofs.underWay().isPresent(), Refusal.PROOF_RUN_UNDER_WAY);
        boolean isCalibrating = situation.calibrations().sitting().isPresent();
        refuseIf(isCalibrating, Refusal.ALREADY_CALIBRATING);
        refuseIf(isKnown && !proofs.isClear(station), Refusal.PROOF_RUN_NOT_CLEAR);
    }

    private void tap(Act.ProofTap act) {
        Station station =
                situation.course().station(act.station()).map(run -> run.station()).orElse(null);
        refuseIf(station == null, Refusal.UNKNOWN_STATION);
        if (station != null) {
            refuseIf(!station.points().contains(act.point()), Refusal.UNKNOWN_POINT);
            refuseIf(!proofs.proves(act.station()), Refusal.NOT_PROVING);
        }
    }

    private void signal() {
        Station first = situation.course().plan().stations().get(0);
        refuseIf(!Movements.startsBySignal(first), Refusal.UNKNOWN_POINT);
        refuseIf(!proofs.proves(first.id()), Refusal.NOT_PROVING);
    }

    private void sign(Act.SignProofRun act) {
        end(act.words());
        ProofRun run = proofs.underWay().orElse(null);
        if (run == null) {
            return;
        }
        List<ProofPoint> now = proofs.points(nowMicros);
        boolean isClean = now.stream().allMatch(p -> p.state() == ProofPoint.State.SEEN);
        refuseIf(!isClean && ProofActs.words(act.words()).isEmpty(), Refusal.NO_WORDS);
        refuseIf(basis >= 0 && basis != proofs.revision(), Refusal.OUT_OF_DATE);
        boolean isSame =
                run.standing(now).filter(s -> s.isBy(who.person(), who.device())).isPresent();
        refuseIf(isSame, Refusal.SIGNED_BY_YOU);
    }

    private void end(String words) {
        refuseIf(ProofActs.words(words).length() > Admission.WORDS_MAX, Refusal.WORDS_TOO_LONG);
        refuseIf(proofs.underWay().isEmpty(), Refusal.NOT_PROVING);
    }
}
