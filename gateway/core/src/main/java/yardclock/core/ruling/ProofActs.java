package yardclock.core.ruling;

import yardclock.core.fact.Gathering;
import yardclock.core.proof.ProofRun;
import yardclock.core.proof.ProofWhy;
import yardclock.core.proof.Proofs;
import yardclock.core.proof.Signature;
import yardclock.core.run.TabletPress;

import java.util.function.LongUnaryOperator;
import java.util.function.Supplier;

/** Carries out what is done in a proof run. */
final class ProofActs {
    private final Proofs proofs;
    private final LongUnaryOperator wall;
    private final Devices.Holder who;
    private final long nowMicros;
    private final Gathering out;

    ProofActs(Situation situation, Devices.Holder who, long nowMicros, Gathering out) {
        this.proofs = situation.proofs();
        this.wall = situation.wall();
        this.who = who;
        this.nowMicros = nowMicros;
        this.out = out;
    }

    static String words(String words) {
        return words == null ? "" : words.strip();
    }

    /** Empty for the whole course. */
    static String station(Act.BeginProofRun act) {
        return words(act.station());
    }

    void carryOut(Act act, Supplier<TabletPress> press) {
        switch (act.kind()) {
            case BEGIN_PROOF_RUN -> begin((Act.BeginProofRun) act);
            case PROOF_TAP -> {
                Act.ProofTap tap = (Act.ProofTap) act;
                proofs.press(tap.station(), tap.point(), press.get());
            }
            case PROOF_SIGNAL -> proofs.signal(out);
            case SIGN_PROOF_RUN -> sign(words(((Act.SignProofRun) act).words()));
            case END_PROOF_RUN -> {
                String words = words(((Act.EndProofRun) act).words());
                String said = words.isEmpty() ? "." : ": " + words;
                proofs.giveUp("Given up by " + who.person() + said, nowMicros, out);
            }
            default -> throw new IllegalArgumentException("no act of a proof run: " + act);
        }
    }

    private void begin(Act.BeginProofRun act) {
        String station = station(act);
        ProofWhy usual = station.isEmpty() ? ProofWhy.START_OF_DAY : ProofWhy.AFTER_REPAIR;
        ProofWhy why = act.why() == null ? usual : act.why();
        proofs.begin(new ProofRun(station, why, nowMicros, who.person(), null), out);
    }

    private void sign(String words) {
        proofs.sign(
                new Signature(
                        who.person(),
                        who.device(),
                        words,
                        nowMicros,
                        wall.applyAsLong(nowMicros),
                        proofs.points(nowMicros)),
                out);
    }
}
