package yardclock.core.board;

import yardclock.core.course.Contact;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;
import yardclock.core.health.ClockTrouble;
import yardclock.core.health.Unit;
import yardclock.core.health.UnitStatus;
import yardclock.core.intake.AnswerLedger;
import yardclock.core.intake.AnswerRefusal;
import yardclock.core.intake.BootLedger;
import yardclock.core.passage.TimedEdge;
import yardclock.core.run.CourseRun;
import yardclock.core.run.SecondClocks;
import yardclock.core.run.StationRun;
import yardclock.core.time.ClockStatus;
import yardclock.core.time.GatewayTime;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes the frames of those who look after the equipment: the crew's and the technician's. */
public final class StaffProjection {
    private final Picture picture;

    public StaffProjection(Picture picture) {
        this.picture = picture;
    }

    public CrewFrame crew() {
        List<CrewFrame.Reset> resets =
                picture.course().stations().stream()
                        .filter(run -> run.state() == StationRun.State.TO_BE_RESET)
                        .sorted(Comparator.comparingLong(StationRun::sinceMicros))
                        .map(this::reset)
                        .toList();
        List<StationView> stations =
                picture.course().stations().stream().map(picture::station).toList();
        return new CrewFrame(picture.head(), resets, stations);
    }

    private CrewFrame.Reset reset(StationRun run) {
        List<Text> open =
                run.station().homeContacts().stream()
                        .filter(this::isNotHome)
                        .map(home -> picture.sensorName(home.sensor()))
                        .toList();
        return new CrewFrame.Reset(
                run.station().id(), run.station().name(), run.sinceMicros(), open);
    }

    private boolean isNotHome(Contact home) {
        int state = picture.sensorState(home.sensor());
        return state >= 0 && state != home.state();
    }

    public BenchFrame bench() {
        SecondClocks byHand = new SecondClocks(picture.course());
        return new BenchFrame(
                picture.head(),
                picture.units().stream().map(this::unit).toList(),
                picture.newestEdges().stream().map(StaffProjection::edge).toList(),
                picture.moment().alarms(),
                new CalibrationProjection(picture.calibrations()).view(),
                byHand.byPoint(),
                byHand.byProctor(),
                triggers(),
                ProofView.of(picture.proofs(), picture.moment().gatewayMicros()));
    }

    private List<TriggerView> triggers() {
        CourseRun course = picture.course();
        int version = course.plan().name().version();
        return course.stations().stream()
                .flatMap(
                        run ->
                                TriggerView.of(
                                        run.station(), version, course.whereabouts().isTaken(run))
                                        .stream())
                .toList();
    }

    /** One unit's clock as a picture; empty when the plan has no such unit. */
    public Optional<ClockSheet> clock(String id) {
        GatewayTime now = new GatewayTime(picture.moment().gatewayMicros());
        return picture.units().stream()
                .filter(unit -> unit.plan().id().equals(id))
                .findFirst()
                .map(
                        unit ->
                                new ClockSheet(
                                        picture.moment().entry(),
                                        now.micros(),
                                        id,
                                        unit.status().boot(),
                                        unit.clockTrace(unit.status().boot(), now)));
    }

    private BenchFrame.UnitView unit(Unit unit) {
        UnitStatus status = unit.status();
        String boot = status.boot();
        BootLedger ledger = boot.isEmpty() ? new BootLedger() : unit.ledger().boot(boot);
        GatewayTime now = new GatewayTime(picture.moment().gatewayMicros());
        ClockStatus clock = unit.clockStatus(boot, now);
        return new BenchFrame.UnitView(
                unit.plan().id(),
                unit.plan().place(),
                status.status().word(),
                status.status().words(),
                status.sinceMicros(),
                boot,
                ledger.announcedNext(),
                ledger.contiguous(),
                ledger.gaps().stream().map(BootLedger.Range::toString).toList(),
                unit.ledger().fresh(),
                unit.ledger().duplicates(),
                unit.ledger().conflicts(),
                unit.ledger().refused(),
                status.batteryMillivolts(),
                status.rssiDbm(),
                status.bufferFill(),
                status.firmware(),
                clock,
                answers(unit.answers()),
                unit.waitingEdges(),
                ClockTrouble.of(unit, clock, ClockTrouble.patienceMicros(picture.course().speed())),
                unit.plan().sensors().stream().map(s -> sensor(status, s)).toList());
    }

    private static BenchFrame.AnswersView answers(AnswerLedger answers) {
        return new BenchFrame.AnswersView(
                answers.asked(),
                answers.lost(),
                answers.refused(AnswerRefusal.AGAIN),
                answers.refused(AnswerRefusal.LATE),
                answers.refused(AnswerRefusal.UNKNOWN),
                answers.otherBoot());
    }

    private static BenchFrame.SensorView sensor(UnitStatus status, SensorPlan sensor) {
        return new BenchFrame.SensorView(
                sensor.number(),
                sensor.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                sensor.name(),
                status.sensorState(sensor.number()),
                sensor.restState(),
                status.lastEdgeMicros(sensor.number()));
    }

    private static BenchFrame.EdgeView edge(TimedEdge edge) {
        return new BenchFrame.EdgeView(
                edge.sensor().unit(),
                edge.seq(),
                edge.sensor().sensor(),
                edge.state(),
                edge.stamp().micros(),
                edge.stamp().widthMicros());
    }
}
