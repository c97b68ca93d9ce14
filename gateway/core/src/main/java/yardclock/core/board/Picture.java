package yardclock.core.board;

import yardclock.core.calibration.Calibrations;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Text;
import yardclock.core.health.Unit;
import yardclock.core.health.UnitStatus;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;
import yardclock.core.heat.watch.HeatStatus;
import yardclock.core.heat.watch.HeatStatus.Freshness;
import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.passage.TimedEdge;
import yardclock.core.proof.Proofs;
import yardclock.core.ruling.Devices;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.ReleaseHolds;
import yardclock.core.run.CourseRun;
import yardclock.core.run.StationRun;
import yardclock.core.trouble.SensorWatch;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The state as projections read it, at one moment. Used on the state's own thread only. */
public record Picture(
        Moment moment,
        CourseRun course,
        Collection<Unit> units,
        List<TimedEdge> newestEdges,
        Devices devices,
        HeatWatch heat,
        Calibrations calibrations,
        SensorWatch watch,
        Proofs proofs) {
    private static final List<String> LEVEL_WORDS =
            List.of("normal", "caution", "more rest", "hold new releases", "stop");

    /** When the picture is for, and what the adapters and the engine have to warn of. */
    public record Moment(
            long entry,
            long gatewayMicros,
            long wallMicros,
            List<String> troubles,
            List<String> alarms) {}

    Head head() {
        return new Head(
                moment.entry(),
                moment.gatewayMicros(),
                moment.wallMicros(),
                course.speed(),
                Head.CourseStatus.valueOf(course.status().name()),
                course.statusWords(),
                holds(),
                heatView(),
                moment.troubles());
    }

    private List<Head.ReleaseHold> holds() {
        return ReleaseHolds.now(course, heat, proofs, moment.gatewayMicros()).stream()
                .flatMap(refusal -> holds(refusal).stream())
                .toList();
    }

    private List<Head.ReleaseHold> holds(Refusal refusal) {
        return refusal == Refusal.TEAM_AWAY
                ? course.standBy().holding().stream()
                        .map(team -> new Head.ReleaseHold(refusal.code(), team.word()))
                        .toList()
                : List.of(new Head.ReleaseHold(refusal.code(), ""));
    }

    private HeatView heatView() {
        long now = moment.gatewayMicros();
        HeatStatus status = heat.status(now);
        HeatReading reading = heat.newest();
        if (reading == null) {
            return new HeatView(status.level(), word(status), -1, 0, 0, -1, "no reading yet");
        }
        ReadingLevel figures = heat.figures();
        return new HeatView(
                status.level(),
                word(status),
                figures.indexDeciF(),
                reading.centiCelsius(),
                reading.centiPercent(),
                now - reading.measuredMicros(),
                figures.method());
    }

    private static String word(HeatStatus status) {
        if (!status.isUnknown()) {
            return LEVEL_WORDS.get(status.level());
        }
        return status.freshness() == Freshness.NONE
                ? "unknown: no reading yet"
                : "unknown (was " + LEVEL_WORDS.get(status.was()) + ")";
    }

    int sensorState(SensorRef sensor) {
        return units.stream()
                .filter(u -> u.plan().id().equals(sensor.unit()))
                .mapToInt(u -> u.status().sensorState(sensor.sensor()))
                .findFirst()
                .orElse(-1);
    }

    Text sensorName(SensorRef sensor) {
        return course.plan()
                .fieldUnit(sensor.unit())
                .flatMap(
                        u ->
                                u.sensors().stream()
                                        .filter(s -> s.number() == sensor.sensor())
                                        .findFirst())
                .map(SensorPlan::name)
                .orElse(new Text(sensor.toString(), sensor.toString()));
    }

    StationView station(StationRun run) {
        return new StationView(
                run.station().id(),
                run.station().name(),
                StationView.State.valueOf(run.state().name()),
                run.number(),
                run.sinceMicros(),
                trouble(run),
                watch.isHeld(run.station().id()));
    }

    /** The first unit of the station that is not up, in words. */
    private String trouble(StationRun run) {
        for (Unit unit : units) {
            UnitStatus.Status status = unit.status().status();
            if (status != UnitStatus.Status.UP && run.uses(unit.plan().id())) {
                return unit.plan().id() + ": " + status.words();
            }
        }
        return watch.hasTroubles() ? sensorTrouble(run) : "";
    }

    /** The first sensor's trouble, those that hold the station before the others. */
    private String sensorTrouble(StationRun run) {
        return watch.troubles().stream()
                .filter(trouble -> trouble.station().equals(run.station().id()))
                .min(Comparator.comparing(trouble -> !trouble.holds()))
                .map(t -> t.words() + (t.holds() ? "" : " By hand: " + t.byHand()))
                .orElse("");
    }

    String person(String device) {
        return devices.device(device).map(Devices.Holder::person).orElse("");
    }
}
