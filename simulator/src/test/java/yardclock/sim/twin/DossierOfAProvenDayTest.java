package yardclock.sim.twin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Inclusion;
import yardclock.app.records.dossier.Play;
import yardclock.app.records.dossier.Timeline;
import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.proof.ProofWhy;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.List;

/**
 * A day whose plan requires a proof run, which two persons signed before the first release: a
 * dossier holds nothing of it, and gives the same timeline all the same.
 */
class DossierOfAProvenDayTest {
    private static final long SEED = 7;
    private static final long MARGIN = 600_000_000L;
    private static final int NUMBER = 2;

    private static ExamPlan requiring(ExamPlan plan) {
        DayRules day = plan.day();
        return plan.ruledBy(
                new DayRules(
                        day.releaseIntervalMicros(),
                        day.startKind(),
                        day.proctors(),
                        day.afterFault(),
                        day.maxHoldCreditOneMicros(),
                        day.maxHoldCreditAllMicros(),
                        day.timesOnBoard(),
                        day.leaderboardPublic(),
                        day.startWords(),
                        day.stopSignal(),
                        day.workWatts(),
                        DayRules.ProofRule.REQUIRED));
    }

    private static Input ruling(String device, Act act, long atMicros) {
        return new Input.Ruling("proof-" + act.kind(), device, "", 0, atMicros, -1, act);
    }

    private static boolean isRelease(Entry entry) {
        return entry.input() instanceof Input.Ruling ruling && ruling.act() instanceof Act.Release;
    }

    /** What happens between the morning and the first release. */
    private static List<Input> proofRun(Input.Ruling first, long atMicros) {
        Act sign = new Act.SignProofRun("nothing was walked");
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input.CodeIssued("code-of-t", Role.TECHNICIAN, ""));
        inputs.add(new Input.Enrolled("t", "Ada", Role.TECHNICIAN, "code-of-t", "token-of-t"));
        inputs.add(ruling("t", new Act.BeginProofRun("", ProofWhy.START_OF_DAY), atMicros));
        inputs.add(ruling(first.device(), new Act.Release(NUMBER, ""), atMicros));
        inputs.add(ruling("t", sign, atMicros));
        inputs.add(ruling(first.device(), sign, atMicros));
        return inputs;
    }

    private static List<Entry> proven(List<Entry> journal) {
        List<Entry> proven = new ArrayList<>();
        long from = Long.MAX_VALUE;
        long added = 0;
        for (Entry entry : journal) {
            long at = entry.gatewayMicros();
            if (isRelease(entry) && added == 0) {
                from = entry.number();
                List<Input> inputs = proofRun((Input.Ruling) entry.input(), at);
                added = inputs.size();
                inputs.forEach(input -> proven.add(new Entry(proven.size() + 1L, at, input)));
            }
            Input input = moved(entry.input(), from, added);
            proven.add(new Entry(proven.size() + 1L, at, input));
        }
        return proven;
    }

    private static Input moved(Input input, long from, long by) {
        if (input instanceof Input.PlanFrozen frozen) {
            return new Input.PlanFrozen(requiring(frozen.plan()), frozen.sha256());
        }
        if (input instanceof Input.Ruling ruling && ruling.supersedes() >= from) {
            return new Input.Ruling(
                    ruling.key(),
                    ruling.device(),
                    ruling.boot(),
                    ruling.deviceMicros(),
                    ruling.receivedMicros(),
                    ruling.basis(),
                    ruling.supersedes() + by,
                    ruling.shownMicros(),
                    ruling.act());
        }
        return input;
    }

    @Test
    void the_part_of_one_attempt_gives_the_timeline_of_the_whole() throws Exception {
        TwinDay day = new TwinDay(SEED, 4);
        day.play();
        List<Entry> entries = proven(day.journal());
        Play whole = new Play(NUMBER);
        entries.forEach(whole::take);
        Timeline all = whole.timeline();
        assertThat(all.standing().officialMicros()).as("seed %d", SEED).isPositive();
        List<Entry> kept = entries.stream().filter(Inclusion.of(whole, MARGIN)).toList();
        assertThat(kept)
                .extracting(Entry::input)
                .noneMatch(i -> i instanceof Input.Ruling r && r.act() instanceof Act.SignProofRun);
        assertThat(Dossier.differences(all, Play.ofPart(kept, NUMBER))).isEmpty();
    }
}
