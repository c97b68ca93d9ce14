package yardclock.app.records.dossier;

import yardclock.core.course.ExamPlan;
import yardclock.core.passage.Block;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;
import yardclock.core.result.Result;
import yardclock.core.run.Attempt;
import yardclock.core.run.Hold;
import yardclock.core.run.Mark;
import yardclock.core.run.PointPassage;
import yardclock.core.run.TabletPress;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnEvidence;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes down what a timeline says since the second version of its form. Used once. */
final class FurtherWriting {
    private static final Stamp NONE = new Stamp(-1, -1, -1);

    private final Play play;
    private final Optional<ExamPlan> plan;
    private final Optional<Attempt> attempt;
    private final Optional<Result> result;

    FurtherWriting(Play play) {
        this.play = play;
        this.plan = play.engine.plan();
        this.attempt = play.attempt();
        this.result =
                play.engine.results().stream().filter(r -> r.number() == play.number).findFirst();
    }

    Further further() {
        return new Further(
                play.walls,
                result.map(r -> new Further.Official(r.display(), r.parts(), r.settled()))
                        .orElse(null),
                passages(),
                attempt.map(a -> a.holds().stream().map(hold -> hold(a, hold)).toList())
                        .orElse(List.of()),
                calls(),
                plan.map(play.units::lines).orElse(List.of()));
    }

    private List<Further.PassageLine> passages() {
        List<Further.PassageLine> lines = new ArrayList<>();
        for (Turn turn : attempt.map(Attempt::turns).orElse(List.of())) {
            for (PointPassage each : PointPassage.of(turn, plan.orElseThrow())) {
                lines.add(passage(turn, each));
            }
        }
        return lines;
    }

    private Further.PassageLine passage(Turn turn, PointPassage each) {
        Passage passage = each.passage();
        return new Further.PassageLine(
                turn.station().id(),
                each.point(),
                entry(passage.edge()),
                passage.stamp().micros(),
                passage.stamp().lowerMicros(),
                passage.stamp().upperMicros(),
                passage.rule().toString(),
                isMark(turn, each),
                passage.edges().stream().map(this::entry).toList(),
                passage.blocks().stream().map(FurtherWriting::micros).toList());
    }

    private static boolean isMark(Turn turn, PointPassage each) {
        List<Mark> marks =
                switch (each.point()) {
                    case "start" -> listOf(turn.start());
                    case "finish" -> listOf(turn.finish());
                    default ->
                            TurnEvidence.of(turn)
                                    .checkpoints()
                                    .getOrDefault(each.point(), List.of());
                };
        return marks.stream().anyMatch(mark -> isOf(mark, each.passage()));
    }

    private static List<Mark> listOf(Mark mark) {
        return mark == null ? List.of() : List.of(mark);
    }

    private static boolean isOf(Mark mark, Passage passage) {
        return mark.edge() != null && mark.edge().key().equals(passage.edge().key());
    }

    private static long micros(Block part) {
        return part.from() == null || part.until() == null ? -1 : part.micros();
    }

    private long entry(TimedEdge edge) {
        return play.entryOfEdge.get(edge.key()).number();
    }

    private static Further.HoldLine hold(Attempt attempt, Hold hold) {
        Stamp in = stamp(hold.in());
        Stamp out = stamp(hold.out());
        return new Further.HoldLine(
                in.micros(),
                in.lowerMicros(),
                in.upperMicros(),
                out.micros(),
                out.lowerMicros(),
                out.upperMicros(),
                attempt.heldMicros(hold),
                hold.reason());
    }

    private static Stamp stamp(TabletPress press) {
        return press == null || !press.isDated() ? NONE : press.stamp();
    }

    private List<Further.CallLine> calls() {
        return result.map(Result::calls).orElse(List.of()).stream()
                .map(
                        call ->
                                new Further.CallLine(
                                        call.station(),
                                        call.criterion(),
                                        call.fault(),
                                        call.atMicros(),
                                        call.proctor()))
                .toList();
    }
}
