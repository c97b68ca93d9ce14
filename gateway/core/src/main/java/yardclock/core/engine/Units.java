package yardclock.core.engine;

import yardclock.core.account.Account;
import yardclock.core.account.Cause;
import yardclock.core.calibration.Calibrations;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Canonical;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Unit;
import yardclock.core.health.UnitStatus;
import yardclock.core.intake.BootLedger;
import yardclock.core.intake.Judgement;
import yardclock.core.intake.RawEdge;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.proof.Proofs;
import yardclock.core.result.Results;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.StopButtons;
import yardclock.core.time.Stamp;
import yardclock.core.time.TimeLines;
import yardclock.core.trouble.SensorWatch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What field units say, on its way to the course: judged, stamped in gateway time, routed.
 *
 * <p>An edge of a unit whose clock was never compared waits; the first exchange lets it through.
 */
final class Units {
    /** What the bench shows as the newest edges. */
    static final int NEWEST_SHOWN = 80;

    /** A missing edge is asked for at most this often; in real time, as all retries. */
    private static final long ASK_AGAIN_REAL_MICROS = 1_000_000;

    private final Map<String, Unit> units;
    private final Deque<TimedEdge> newest = new ArrayDeque<>();
    private final TimeLines lines;
    private final CourseRun course;
    private final ClockWatch clockWatch;
    private final Calibrations calibrations;
    private final Account account;
    private final SensorWatch watch;
    private final Proofs proofs;

    Units(Map<String, Unit> units, TimeLines lines, CourseRun course, Account account) {
        this.account = account;
        this.lines = lines;
        this.units = units;
        this.course = course;
        this.clockWatch = new ClockWatch(course.plan().timing().boundLimitMicros());
        this.calibrations = new Calibrations(units, course);
        this.watch = new SensorWatch(course, units.values());
        this.proofs = new Proofs(course, units);
    }

    Calibrations calibrations() {
        return calibrations;
    }

    Proofs proofs() {
        return proofs;
    }

    SensorWatch watch() {
        return watch;
    }

    Collection<Unit> all() {
        return Collections.unmodifiableCollection(units.values());
    }

    Collection<TimedEdge> newest() {
        return Collections.unmodifiableCollection(newest);
    }

    int sensorState(SensorRef sensor) {
        Unit unit = units.get(sensor.unit());
        return unit == null ? -1 : unit.status().sensorState(sensor.sensor());
    }

    void edge(Input.Edge edge, long nowMicros, Gathering out) {
        Unit unit = known(edge.unit(), out);
        if (unit == null) {
            account.note(keyOf(edge), Cause.UNKNOWN_UNIT);
            return;
        }
        alive(unit, nowMicros, out);
        RawEdge raw = new RawEdge(edge.sensor(), edge.state(), edge.tick());
        Judgement judgement = unit.ledger().take(edge.boot(), edge.seq(), raw);
        out.conclude(Fact.aboutUnit(kindOf(judgement), edge.unit(), "seq " + edge.seq()));
        if (judgement == Judgement.CONFLICTING) {
            out.conclude(
                    Fact.aboutUnit(
                            FactKind.ALARM,
                            edge.unit(),
                            "The same edge number came twice with different content."));
        }
        BootLedger ledger = unit.ledger().boot(edge.boot());
        out.ask(new Effect.Kept(edge.unit(), edge.boot(), ledger.contiguous()));
        askForGaps(unit, edge.boot(), nowMicros, out);
        if (unit.closesGap(edge.boot())) {
            out.conclude(Fact.aboutUnit(FactKind.GAP_CLOSED, edge.unit(), ""));
        }
        if (judgement == Judgement.BACKWARDS) {
            account.note(keyOf(edge), Cause.BACKWARDS);
        }
        if (judgement == Judgement.FRESH) {
            unit.status().edge(edge.boot(), edge.tick(), edge.sensor(), edge.state(), nowMicros);
            stopIfButton(unit, edge, nowMicros, out);
            Unit.Waiting taken =
                    new Unit.Waiting(
                            edge.boot(),
                            edge.seq(),
                            edge.sensor(),
                            edge.state(),
                            edge.tick(),
                            nowMicros);
            stampOrWait(unit, taken, nowMicros, out);
            watch.see(edge.unit(), nowMicros, out);
        }
    }

    private void stopIfButton(Unit unit, Input.Edge edge, long nowMicros, Gathering out) {
        SensorRef sensor = new SensorRef(edge.unit(), edge.sensor());
        if (course.stopButtons().has(sensor)) {
            StopButtons.Press press = new StopButtons.Press(sensor, edge.state());
            int state = unit.status().sensorState(edge.sensor());
            Stamp when = unit.dated(edge.boot(), edge.tick(), nowMicros, lines).orElse(null);
            course.stopButtons().edge(press, state, when, nowMicros, out);
        }
    }

    private static EdgeKey keyOf(Input.Edge edge) {
        return new EdgeKey(edge.unit(), edge.boot(), edge.seq());
    }

    private static FactKind kindOf(Judgement judgement) {
        return switch (judgement) {
            case FRESH -> FactKind.EDGE_TAKEN;
            case DUPLICATE -> FactKind.EDGE_DUPLICATE;
            case CONFLICTING -> FactKind.EDGE_CONFLICT;
            case BACKWARDS -> FactKind.EDGE_REFUSED;
        };
    }

    private void stampOrWait(Unit unit, Unit.Waiting edge, long nowMicros, Gathering out) {
        Optional<Unit.Placed> placed = unit.place(edge, lines);
        if (placed.isEmpty()) {
            EdgeKey key = new EdgeKey(unit.plan().id(), edge.boot(), edge.seq());
            account.note(key, Cause.NO_CLOCK);
            if (!unit.await(edge) && unit.turnedAway() == 1) {
                out.conclude(
                        Fact.aboutUnit(
                                FactKind.ALARM,
                                unit.plan().id(),
                                "Its clock was never compared; its edges are only journalled."));
            }
            return;
        }
        SensorRef sensor = new SensorRef(unit.plan().id(), edge.sensor());
        int line = placed.get().line();
        TimedEdge timed =
                new TimedEdge(
                        sensor,
                        edge.state(),
                        placed.get().stamp(),
                        line,
                        edge.boot(),
                        edge.seq(),
                        edge.tick(),
                        line == lines.current() ? edge.arrivedMicros() : Long.MAX_VALUE,
                        unit.responseMicros(edge.sensor()));
        newest.addFirst(timed);
        if (newest.size() > NEWEST_SHOWN) {
            newest.removeLast();
        }
        warnOfWidth(timed, out);
        if (calibrations.takes(timed)) {
            calibrations.take(sensor, edge);
            account.note(timed.key(), Cause.CALIBRATION);
            return;
        }
        course.edge(timed, nowMicros, out);
    }

    private void warnOfWidth(TimedEdge edge, Gathering out) {
        if (edge.stamp().widthMicros() > course.plan().timing().boundLimitMicros()) {
            out.conclude(
                    new Fact(
                            FactKind.WIDE_BOUND,
                            0,
                            edge.sensor().unit(),
                            "",
                            edge.stamp(),
                            edge.stamp().widthMicros(),
                            "interval wider than the plan allows"));
        }
    }

    private void askForGaps(Unit unit, String boot, long nowMicros, Gathering out) {
        List<BootLedger.Range> gaps = unit.ledger().boot(boot).gaps();
        long every = ASK_AGAIN_REAL_MICROS * course.speed();
        if (gaps.isEmpty() || !unit.mayAskAgain(nowMicros, every)) {
            return;
        }
        for (BootLedger.Range gap : gaps) {
            out.ask(new Effect.AskAgain(unit.plan().id(), boot, gap.from(), gap.to()));
        }
        unit.openGap(boot);
        out.conclude(Fact.aboutUnit(FactKind.GAP_OPENED, unit.plan().id(), gaps.toString()));
    }

    void health(Input.Health health, long nowMicros, Gathering out) {
        Unit unit = known(health.unit(), out);
        if (unit == null) {
            return;
        }
        UnitStatus status = unit.status();
        if (!health.boot().equals(status.boot())) {
            out.conclude(Fact.aboutUnit(FactKind.UNIT_BOOTED, health.unit(), health.boot()));
        }
        status.report(
                health.boot(),
                health.batteryMillivolts(),
                health.rssiDbm(),
                health.bufferFill(),
                health.firmware());
        status.states(health.sensorStates(), health.tick());
        status.speaks(health.accessPoint(), health.contract());
        calibrations.look(health.unit(), nowMicros, out);
        watch.see(health.unit(), nowMicros, out);
        alive(unit, nowMicros, out);
        course.stopButtons().states(health.unit(), status::sensorState, nowMicros, out);
        BootLedger ledger = unit.ledger().boot(health.boot());
        // What was announced last time had until now to arrive; only then is it a gap.
        askForGaps(unit, health.boot(), nowMicros, out);
        ledger.announce(health.nextSeq());
        long wholeFrom = ledger.wholeFromTick(health.nextSeq());
        unit.watermark().hear(health.boot(), health.tick(), wholeFrom, nowMicros);
        course.passing().told(health.unit(), out);
        if (health.bufferFill() > 0) {
            // A `kept` can be lost or overtaken on its way; a unit that still waits is told again.
            out.ask(new Effect.Kept(health.unit(), health.boot(), ledger.contiguous()));
        }
    }

    void down(String id, long nowMicros, Gathering out) {
        Unit unit = known(id, out);
        if (unit != null && unit.status().down(nowMicros)) {
            course.stopButtons().lose(id);
            tellStatus(unit, FactKind.UNIT_SILENT, out);
        }
    }

    void exchange(Input.ExchangeAnswered answer, long nowMicros, Gathering out) {
        Unit unit = known(answer.unit(), out);
        if (unit == null) {
            return;
        }
        alive(unit, nowMicros, out);
        if (!answer.boot().equals(unit.status().boot()) && !unit.status().boot().isEmpty()) {
            unit.answers().fromOtherBoot();
        }
        if (!unit.answers().take(answer.id())) {
            out.conclude(Fact.aboutUnit(FactKind.EXCHANGE_REFUSED, answer.unit(), "answered"));
            return;
        }
        boolean taken = unit.clock(answer.boot()).accept(Exchanges.of(answer));
        FactKind kind = taken ? FactKind.EXCHANGE_TAKEN : FactKind.EXCHANGE_REFUSED;
        out.conclude(Fact.aboutUnit(kind, answer.unit(), ""));
        calibrations.compared(answer.unit());
        bridge(unit, answer.boot(), nowMicros, out);
        for (Unit.Waiting waiting : unit.takeStampable(answer.boot())) {
            stampOrWait(unit, waiting, nowMicros, out);
        }
        for (Attempt settled : course.settle(answer.unit(), out)) {
            warnOfOtherDecision(settled, out);
        }
        clockWatch.compared(unit, nowMicros, course.speed(), out);
    }

    /** A ruling keeps what was seen; when the final stamps decide otherwise a person must know. */
    private void warnOfOtherDecision(Attempt attempt, Gathering out) {
        if (Results.decidesOtherwise(course.plan(), attempt)) {
            String words =
                    "The final clock values decide otherwise than what was ruled: to review.";
            out.conclude(Fact.of(FactKind.ALARM, attempt.number(), "", words));
        }
    }

    /** No sign of life: an answer from long ago says nothing of now. */
    void answerRefused(Input.AnswerRefused refused, Gathering out) {
        Unit unit = known(refused.unit(), out);
        if (unit != null) {
            unit.answers().refuse(refused.why(), refused.count());
            out.conclude(
                    Fact.aboutUnit(
                            FactKind.EXCHANGE_REFUSED,
                            refused.unit(),
                            refused.why().name().toLowerCase(Locale.ROOT)));
        }
    }

    /** A new time line of the gateway has begun. */
    void beginLine(long nowMicros, Gathering out) {
        proofs.interrupt(out);
        units.values().forEach(unit -> unit.beginLine(lines.current(), nowMicros));
    }

    /** A boot that ran on over the gateway's restart says how long that took. */
    private void bridge(Unit unit, String boot, long nowMicros, Gathering out) {
        if (unit.tie(boot, lines)) {
            tied(nowMicros, out);
        }
    }

    /** Something that ran on has said how the present time line lies to earlier ones. */
    void tied(long nowMicros, Gathering out) {
        if (course.tied(nowMicros, out)) {
            units.values().forEach(Unit::forgetOrder);
        }
    }

    private Unit known(String id, Gathering out) {
        Unit unit = units.get(id);
        if (unit == null) {
            out.conclude(Fact.aboutUnit(FactKind.EDGE_REFUSED, id, "unknown unit"));
        }
        return unit;
    }

    private static void alive(Unit unit, long nowMicros, Gathering out) {
        if (unit.status().signOfLife(nowMicros)) {
            tellStatus(unit, FactKind.UNIT_BACK, out);
        }
    }

    private static void tellStatus(Unit unit, FactKind kind, Gathering out) {
        out.conclude(Fact.aboutUnit(kind, unit.plan().id(), unit.status().status().words()));
    }

    void passTime(long nowMicros, Gathering out) {
        watch.passTime(nowMicros, out);
        for (Unit unit : units.values()) {
            if (unit.status().passTime(nowMicros, course.speed())) {
                course.stopButtons().lose(unit.plan().id());
                tellStatus(unit, FactKind.UNIT_SILENT, out);
            }
            if (nowMicros >= unit.boundAlarm().nextLookMicros()) {
                clockWatch.look(unit, nowMicros, course.speed(), out);
            }
        }
    }

    long nextDeadlineMicros() {
        long next = watch.nextDeadlineMicros();
        for (Unit unit : units.values()) {
            next = Math.min(next, unit.status().nextDeadlineMicros(course.speed()));
            next = Math.min(next, unit.boundAlarm().nextLookMicros());
        }
        return next;
    }

    List<Effect> standing() {
        List<Effect> kept = new ArrayList<>();
        for (Unit unit : units.values()) {
            String boot = unit.status().boot();
            if (!boot.isEmpty()) {
                long upto = unit.ledger().boot(boot).contiguous();
                kept.add(new Effect.Kept(unit.plan().id(), boot, upto));
            }
        }
        return kept;
    }

    void describe(Canonical text) {
        units.values().forEach(unit -> text.line("unit", unit));
        text.line("calibrations", calibrations).line("watch", watch);
        if (!proofs.isNone()) {
            text.line("proofs", proofs);
        }
    }
}
