package yardclock.core.result;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.course.TimingRules;
import yardclock.core.readiness.Surfaces;
import yardclock.core.run.Attempt;
import yardclock.core.run.CreditLimit;
import yardclock.core.run.Elapsed;
import yardclock.core.run.Mark;
import yardclock.core.run.OfficialTime;
import yardclock.core.run.Split;
import yardclock.core.run.SplitState;
import yardclock.core.run.Splits;
import yardclock.core.run.Turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the result of an attempt. Pure. */
public final class Results {
    private final ExamPlan plan;
    private final Attempt attempt;
    private final Optional<OfficialTime> time;

    private Results(ExamPlan plan, Attempt attempt) {
        this.plan = plan;
        this.attempt = attempt;
        this.time = OfficialTime.of(plan, attempt);
    }

    public static Result of(ExamPlan plan, Attempt attempt, Surfaces surfaces) {
        return new Results(plan, attempt).result(surfaces);
    }

    /** The least that is said of a result, for screens that list everybody. */
    public static Standing standing(ExamPlan plan, Attempt attempt) {
        return new Results(plan, attempt).standing();
    }

    /** A result without its splits and calls, which screens do not list. */
    public static Headline headline(ExamPlan plan, Attempt attempt) {
        return new Results(plan, attempt).headline();
    }

    /** As {@link Result} has these. */
    public record Standing(String outcome, String outcomeWords, long officialMicros) {}

    /** As {@link Result} has these. */
    public record Headline(
            int number,
            String outcome,
            String outcomeWords,
            long officialMicros,
            long lowerMicros,
            long upperMicros,
            String display,
            String decision) {}

    private Standing standing() {
        Elapsed elapsed = time.isEmpty() ? null : time.get().elapsed();
        String outcome =
                attempt.isDone() ? outcome(elapsed == null ? null : decision(elapsed)) : "";
        long micros = elapsed == null ? -1 : elapsed.micros();
        return new Standing(outcome, outcomeWords(outcome), micros);
    }

    private Headline headline() {
        Standing standing = standing();
        Optional<Elapsed> elapsed = time.map(OfficialTime::elapsed);
        Decision decision = elapsed.map(this::decision).orElse(null);
        return new Headline(
                attempt.number(),
                standing.outcome(),
                standing.outcomeWords(),
                standing.officialMicros(),
                elapsed.map(Elapsed::lowerMicros).orElse(-1L),
                elapsed.map(Elapsed::upperMicros).orElse(-1L),
                elapsed.map(t -> DisplayedTime.text(Math.max(0, t.micros()), plan.timing()))
                        .orElse(""),
                decision == null ? "" : decision.word());
    }

    private Result result(Surfaces surfaces) {
        Headline head = headline();
        return new Result(
                head.number(),
                attempt.run(),
                attempt.group(),
                head.outcome(),
                head.outcomeWords(),
                head.officialMicros(),
                head.lowerMicros(),
                head.upperMicros(),
                time.map(t -> t.elapsed().parts()).orElse(null),
                settled(),
                head.display(),
                head.decision(),
                head.decision().isEmpty() ? "" : rule(head.decision()),
                time.map(OfficialTime::creditMicros).orElse(0L),
                attempt.isTold(),
                splits(surfaces),
                calls());
    }

    private Decision decision(Elapsed elapsed) {
        return Decision.of(elapsed.lowerMicros(), elapsed.upperMicros(), plan.timing());
    }

    private Result.Settled settled() {
        return OfficialTime.settled(plan, attempt)
                .map(OfficialTime::elapsed)
                .map(
                        e ->
                                new Result.Settled(
                                        e.micros(),
                                        e.lowerMicros(),
                                        e.upperMicros(),
                                        decision(e).word()))
                .orElse(null);
    }

    /** Whether the final clock values of one who is through fall on another side of the cut-off. */
    public static boolean decidesOtherwise(ExamPlan plan, Attempt attempt) {
        Results results = new Results(plan, attempt);
        Result.Settled settled = attempt.isDone() ? results.settled() : null;
        return settled != null
                && results.time
                        .map(OfficialTime::elapsed)
                        .map(results::decision)
                        .filter(decision -> !decision.word().equals(settled.decision()))
                        .isPresent();
    }

    /**
     * What ended the attempt early comes first; then holds beyond what the plan credits, which make
     * it void whatever happened in it; then a fault, then the time.
     */
    private String outcome(Decision decision) {
        if (!attempt.ended().isEmpty()) {
            return attempt.ended();
        }
        return switch (time.map(OfficialTime::limit).orElse(CreditLimit.WITHIN)) {
            case WITHIN -> byWhatWasDone(decision);
            case BEYOND -> OutcomeKind.VOID_RE_RUN.word();
            case UNDECIDED -> byHoldsInDoubt(byWhatWasDone(decision));
        };
    }

    /** For the candidate: what is passed with the credit stands, all else is run again. */
    private String byHoldsInDoubt(String otherwise) {
        boolean benefit = plan.timing().undecided() == TimingRules.UndecidedRule.CANDIDATES_BENEFIT;
        if (!benefit) {
            return OutcomeKind.UNDECIDED.word();
        }
        boolean isPassed = otherwise.equals(OutcomeKind.PASSED.word());
        return isPassed ? otherwise : OutcomeKind.VOID_RE_RUN.word();
    }

    private String byWhatWasDone(Decision decision) {
        if (attempt.hasFault()) {
            return OutcomeKind.FAILED_CRITERION.word();
        }
        if (decision == null) {
            return OutcomeKind.UNDECIDED.word();
        }
        boolean benefit = plan.timing().undecided() == TimingRules.UndecidedRule.CANDIDATES_BENEFIT;
        return switch (decision) {
            case WITHIN -> OutcomeKind.PASSED.word();
            case OVER -> OutcomeKind.FAILED_TIME.word();
            case UNDECIDED -> benefit ? OutcomeKind.PASSED.word() : OutcomeKind.UNDECIDED.word();
        };
    }

    private String outcomeWords(String outcome) {
        if (!attempt.endedWords().isEmpty()) {
            return attempt.endedWords();
        }
        return switch (outcome) {
            case "" -> "";
            case "passed" -> "Passed the timed part.";
            case "failed-time" -> "The official time is over the cut-off.";
            case "failed-criterion" -> "A criterion was not met.";
            case "undecided" -> time.isPresent() ? inDoubt() : noTime();
            case "void-re-run" ->
                    "The holds took longer than the plan credits: the attempt is void and is run"
                            + " again.";
            case "withdrawn" -> "Withdrew from the attempt.";
            case "no-show" -> "Did not come.";
            default -> outcome;
        };
    }

    private String inDoubt() {
        return time.get().limit() == CreditLimit.UNDECIDED
                ? "Whether the holds are within what the plan credits lies within the uncertainty"
                        + " of their presses: to review."
                : "Within the timing uncertainty of the cut-off: to review.";
    }

    private String noTime() {
        return attempt.hasUntimedHold()
                ? "There is no official time: a hold was pressed on a tablet whose clock was never"
                        + " compared. To review."
                : "There is no official time: to review.";
    }

    private String rule(String decision) {
        if (!decision.equals(Decision.UNDECIDED.word())) {
            return "The whole interval lies on one side of the cut-off.";
        }
        return plan.timing().undecided() == TimingRules.UndecidedRule.CANDIDATES_BENEFIT
                ? "The cut-off lies inside the interval: the plan decides for the candidate."
                : "The cut-off lies inside the interval: the plan asks for a review.";
    }

    private List<Result.SplitLine> splits(Surfaces surfaces) {
        List<Result.SplitLine> lines = new ArrayList<>();
        for (Station station : plan.stations()) {
            attempt.turnAt(station.id()).map(turn -> line(turn, surfaces)).ifPresent(lines::add);
        }
        return lines;
    }

    private static Result.SplitLine line(Turn turn, Surfaces surfaces) {
        Split split = Splits.of(turn);
        boolean isVoid = split.state() == SplitState.VOID;
        String why = turn.ruledWords().isEmpty() ? split.why().en() : turn.ruledWords();
        return new Result.SplitLine(
                split.station(),
                split.state().word(),
                micros(turn.start()),
                isVoid || !turn.isFinished() && !turn.isRuled() ? -1 : micros(turn.finish()),
                split.micros(),
                split.lowerMicros(),
                split.upperMicros(),
                split.automaticMicros(),
                split.handMicros(),
                why,
                surfaces.at(split.station(), micros(turn.start())));
    }

    private static long micros(Mark mark) {
        return mark == null ? -1 : mark.best().micros();
    }

    private List<Result.CallLine> calls() {
        return attempt.calls().stream()
                .map(
                        c ->
                                new Result.CallLine(
                                        c.station(),
                                        c.criterion(),
                                        c.fault(),
                                        c.atMicros(),
                                        c.person()))
                .toList();
    }
}
