package yardclock.core.ruling;

import yardclock.core.course.Text;
import yardclock.core.fact.Gathering;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes rulings: answers a repeated key with the first answer, refuses what is not admissible,
 * carries out the rest. Owned by one thread.
 */
public final class Decisions {
    /** A long day has a few thousand rulings; a tablet repeats one within minutes. */
    static final int KEYS_KEPT = 20_000;

    /** Whoever meets one of these is shown what stands: they were in good faith, and too late. */
    private static final Set<Refusal> OF_A_CONFLICT =
            EnumSet.of(Refusal.ALREADY_RULED, Refusal.OUT_OF_DATE, Refusal.NOT_YOUR_CANDIDATE);

    private final Map<String, Verdict> answered = new LinkedHashMap<>();
    private final Situation situation;
    private final TabletClocks clocks;

    public Decisions(Situation situation, TabletClocks clocks) {
        this.situation = situation;
        this.clocks = clocks;
    }

    /**
     * One ruling as it reached the engine.
     *
     * @param boot which start of the tablet's clock {@code tick} counts from; empty for none
     * @param tick the tablet's own clock at the press
     * @param supersedes the entry of the ruling that stood on the split as shown, or −1
     * @param shownMicros the split that was shown, all its readings, best first
     * @param receivedMicros gateway time when it was in; the press was not later
     */
    public record Request(
            String key,
            String device,
            String boot,
            long tick,
            long basis,
            long supersedes,
            List<Long> shownMicros,
            long receivedMicros,
            long entry,
            Act act) {}

    public Verdict decide(Request request, long nowMicros, Gathering out) {
        String key = request.device() + '/' + request.key();
        Verdict before = answered.get(key);
        if (before != null) {
            return before;
        }
        Verdict verdict = judge(request, nowMicros, out);
        answered.put(key, verdict);
        if (answered.size() > KEYS_KEPT) {
            answered.remove(answered.keySet().iterator().next());
        }
        return verdict;
    }

    private Verdict judge(Request request, long nowMicros, Gathering out) {
        Devices.Holder who = situation.devices().device(request.device()).orElse(null);
        if (who == null) {
            return Verdict.refused(Refusal.UNKNOWN_DEVICE, request.entry());
        }
        Admission admission = new Admission(situation, who, request, nowMicros);
        Refusal refusal = admission.refusal(request.act());
        if (refusal == Refusal.CHECKLIST_OPEN) {
            List<Text> open = situation.course().checklist().open();
            return Verdict.refused(refusal, request.entry(), open);
        }
        if (refusal != null) {
            return Verdict.refused(
                    refusal,
                    request.entry(),
                    OF_A_CONFLICT.contains(refusal) ? admission.standing() : null);
        }
        new Carrying(situation, clocks, new Carrying.Order(request, who, nowMicros), out)
                .out(request.act());
        return Verdict.accepted(request.entry());
    }

    @Override
    public String toString() {
        return answered.toString();
    }
}
