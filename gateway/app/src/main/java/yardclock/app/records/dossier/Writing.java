package yardclock.app.records.dossier;

import yardclock.app.json.Json;
import yardclock.core.account.Cause;
import yardclock.core.course.PlanName;
import yardclock.core.course.Text;
import yardclock.core.engine.Input;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.reading.PointReading;
import yardclock.core.result.Result;
import yardclock.core.ruling.ActKind;
import yardclock.core.run.Attempt;
import yardclock.core.run.Mark;
import yardclock.core.run.Ruling;
import yardclock.core.run.Split;
import yardclock.core.run.Splits;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnEvidence;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Writes down as a timeline what a play noted and where it ended. Used once. */
final class Writing {
    private static final Set<ActKind> OF_OTHERS =
            EnumSet.of(ActKind.STATION_READY, ActKind.GO_ON_BY_HAND);

    /** Their edge, or the file they stand in, says whose they are. */
    private static final Set<ActKind> ON_AN_EDGE = EnumSet.of(ActKind.STRIKE, ActKind.ASSIGN);

    private final Play play;
    private final Optional<Attempt> attempt;
    private final Function<EdgeKey, Optional<Cause>> causes;

    Writing(Play play) {
        this.play = play;
        this.attempt = play.attempt();
        this.causes = play.engine.edgeCauses();
    }

    Timeline timeline() {
        List<Turn> counted = attempt.map(Attempt::turns).orElse(List.of());
        List<Turn> turns = attempt.map(Attempt::allTurns).orElse(List.of());
        List<Timeline.EdgeLine> edges = new ArrayList<>();
        turns.forEach(turn -> edges(turn, edges));
        edges.sort(Comparator.comparingLong(Timeline.EdgeLine::micros));
        return new Timeline(
                play.number,
                made(),
                standing(),
                counted.stream().map(this::turn).toList(),
                edges,
                rulings(turns),
                play.facts.stream().filter(this::isShown).toList(),
                play.conditions.stream().filter(c -> play.isDuring(c.gatewayMicros())).toList(),
                new FurtherWriting(play).further());
    }

    private boolean isShown(Timeline.FactLine fact) {
        return play.isDuring(fact.gatewayMicros());
    }

    private Timeline.Made made() {
        PlanName plan = play.engine.plan().map(p -> p.name()).orElse(null);
        return new Timeline.Made(
                plan == null ? "" : plan.id(),
                plan == null ? 0 : plan.version(),
                play.engine.planSha256(),
                play.epoch == null ? "" : play.epoch.rulesVersion(),
                play.epoch == null ? 1 : play.epoch.speed(),
                play.epoch == null ? 0 : play.epoch.wallMicros(),
                play.epochMicros);
    }

    private Timeline.Standing standing() {
        return play.engine.results().stream()
                .filter(result -> result.number() == play.number)
                .findFirst()
                .map(Writing::standing)
                .orElse(null);
    }

    private static Timeline.Standing standing(Result r) {
        return new Timeline.Standing(
                r.outcome(),
                r.outcomeWords(),
                r.officialMicros(),
                r.lowerMicros(),
                r.upperMicros(),
                r.decision(),
                r.rule(),
                r.creditedHoldMicros(),
                r.told());
    }

    private Timeline.TurnLine turn(Turn turn) {
        Split split = Splits.of(turn);
        TurnEvidence evidence = TurnEvidence.of(turn);
        List<Timeline.ReadingLine> readings = new ArrayList<>();
        evidence.starts().forEach(reading -> readings.add(reading("start", reading)));
        evidence.finishes().forEach(reading -> readings.add(reading("finish", reading)));
        return new Timeline.TurnLine(
                split.station(),
                split.state().word(),
                mark(turn.start()),
                mark(turn.finish()),
                split.micros(),
                split.lowerMicros(),
                split.upperMicros(),
                split.automaticMicros(),
                split.handMicros(),
                split.why(),
                readings);
    }

    private Timeline.ReadingLine reading(String point, PointReading reading) {
        return new Timeline.ReadingLine(point, entry(reading.edge()), reading.why());
    }

    private Timeline.MarkLine mark(Mark mark) {
        if (mark == null) {
            return null;
        }
        Stamp best = mark.best();
        return new Timeline.MarkLine(
                best.micros(),
                best.lowerMicros(),
                best.upperMicros(),
                Json.word(mark.source()),
                entry(mark.edge()));
    }

    private long entry(TimedEdge edge) {
        return edge == null ? -1 : play.entryOfEdge.get(edge.key()).number();
    }

    private void edges(Turn turn, List<Timeline.EdgeLine> to) {
        TurnEvidence evidence = TurnEvidence.of(turn);
        Map<EdgeKey, String> marks = new TreeMap<>();
        evidence.checkpoints()
                .forEach((id, seen) -> seen.forEach(mark -> put(marks, mark.edge(), id)));
        put(marks, turn.start() == null ? null : turn.start().edge(), "start");
        put(marks, turn.finish() == null ? null : turn.finish().edge(), "finish");
        for (TimedEdge edge : evidence.edges()) {
            to.add(edge(turn, edge, marks.getOrDefault(edge.key(), "")));
        }
    }

    private static void put(Map<EdgeKey, String> marks, TimedEdge edge, String what) {
        if (edge != null) {
            marks.put(edge.key(), what);
        }
    }

    private Timeline.EdgeLine edge(Turn turn, TimedEdge edge, String mark) {
        Cause cause = causes.apply(edge.key()).map(c -> ofTurn(turn, edge, c)).orElse(null);
        return new Timeline.EdgeLine(
                entry(edge),
                turn.station().id(),
                edge.sensor().unit(),
                edge.sensor().sensor(),
                edge.state(),
                edge.boot(),
                ((Input.Edge) play.entryOfEdge.get(edge.key()).input()).seq(),
                edge.tick(),
                edge.stamp().micros(),
                edge.stamp().lowerMicros(),
                edge.stamp().upperMicros(),
                mark,
                cause == null ? "" : cause.word(),
                cause == null ? new Text("", "") : cause.words());
    }

    /** Whether somebody was expected before the start depends on who else was there. */
    private Cause ofTurn(Turn turn, TimedEdge edge, Cause cause) {
        Mark start = turn.start();
        boolean isBefore = start != null && edge.stamp().micros() < start.stamp().micros();
        return isBefore && cause == Cause.NOBODYS && !play.isFirst ? Cause.BEFORE_START : cause;
    }

    /**
     * What people ruled on the number, and of the course while it was out. The crew's readying of
     * stations and going on by hand are not among it: whether they were admissible follows from
     * other people's runs.
     */
    private List<Timeline.RulingLine> rulings(List<Turn> turns) {
        Map<Long, Ruling> kept = new TreeMap<>();
        turns.forEach(turn -> TurnEvidence.of(turn).rulings().forEach(r -> kept.put(r.entry(), r)));
        Set<EdgeKey> edges = new TreeSet<>();
        for (Turn turn : turns) {
            for (TimedEdge edge : TurnEvidence.of(turn).edges()) {
                Input.Edge raw = (Input.Edge) play.entryOfEdge.get(edge.key()).input();
                edges.add(new EdgeKey(raw.unit(), raw.boot(), raw.seq()));
            }
        }
        return play.rulings.stream()
                .filter(r -> isOwn(r, edges) || play.isDuring(r.entry().gatewayMicros()))
                .filter(r -> !OF_OTHERS.contains(r.ruling().act().kind()))
                .filter(
                        r ->
                                !ON_AN_EDGE.contains(r.ruling().act().kind())
                                        || isOwn(r, edges)
                                        || kept.containsKey(r.entry().number()))
                .filter(r -> !r.isRefusedForOthers())
                .map(ruled -> ruling(ruled, kept.get(ruled.entry().number())))
                .toList();
    }

    private boolean isOwn(Play.Ruled ruled, Set<EdgeKey> edges) {
        return Acts.isOf(ruled.ruling().act(), play.number)
                || Acts.edge(ruled.ruling().act()).filter(edges::contains).isPresent();
    }

    private static Timeline.RulingLine ruling(Play.Ruled ruled, Ruling kept) {
        return new Timeline.RulingLine(
                ruled.entry().number(),
                ruled.entry().gatewayMicros(),
                ruled.ruling().receivedMicros(),
                ruled.ruling().deviceMicros(),
                ruled.ruling().device(),
                ruled.person(),
                ruled.role(),
                ruled.ruling().act().kind().word(),
                Acts.fields(ruled.ruling().act()).toString(),
                ruled.ruling().basis(),
                ruled.ruling().shownMicros(),
                ruled.refusal(),
                ruled.ruling().supersedes(),
                kept == null ? "" : Json.word(kept.status()),
                kept == null ? -1 : kept.endedBy());
    }
}
