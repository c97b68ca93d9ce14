package yardclock.core.engine;

import yardclock.core.course.CheckItem;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.Condition;
import yardclock.core.course.Contact;
import yardclock.core.course.Criterion;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.Guards;
import yardclock.core.course.PlanName;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.course.StationTiming;
import yardclock.core.course.SurfaceRules;
import yardclock.core.course.Text;
import yardclock.core.course.TimingRules;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A course of six short stations on seven field units that together use every combination and
 * guard, and one station that two units serve.
 *
 * <pre>
 * walk   horn u1/9 → cap (proctor) → judged by button u1/3
 * drag   mat u2/1 released, stood 0.3 s → post u2/2, a block of 0.1 s → line u2/3 clear 1.5 s
 * poles  mat u3/1 released → two of u3/2, u3/3 → both closed, staying 1 s; home: both open
 * bag    u4/1 opens → top u5/1 → u5/1 then u4/1 closed, after the top; home: u4/1 closed
 * fan    u6/1 then u6/2 within 2 s → hands (proctor) → u6/3 or u6/4, lock-out 2 s, after the hands
 * laps   u7/1, lock-out 1 s → – → the second press of pad u7/2, at least 3 s after the first
 * </pre>
 */
public final class TestPlan {
    private static final long SECOND = 1_000_000;
    private static final List<String> STATIONS =
            List.of("walk", "drag", "poles", "bag", "fan", "laps");

    /** The course's cut-off. */
    public static final long CUT_OFF = 200 * SECOND;

    public static final long RELEASE_INTERVAL = 60 * SECOND;

    private TimingRules.UndecidedRule undecided = TimingRules.UndecidedRule.REVIEW;
    private DayRules.AfterFault afterFault = DayRules.AfterFault.MAY_FINISH;
    private long cutOffMicros = CUT_OFF;
    private boolean timesOnBoard;
    private boolean leaderboardPublic;
    private boolean startsBySignal = true;
    private long releaseIntervalMicros = RELEASE_INTERVAL;
    private List<CheckItem> startOfDay = List.of();
    private SurfaceRules surfaces = SurfaceRules.ADVISORY;
    private DayRules.ProofRule proofRun = DayRules.ProofRule.ADVISED;
    private SensorKind lapsStart = SensorKind.CONTACT;

    public TestPlan benefit() {
        undecided = TimingRules.UndecidedRule.CANDIDATES_BENEFIT;
        return this;
    }

    public TestPlan cutOff(long micros) {
        cutOffMicros = micros;
        return this;
    }

    public TestPlan stopNow() {
        afterFault = DayRules.AfterFault.STOP_NOW;
        return this;
    }

    public TestPlan timesOnBoard() {
        timesOnBoard = true;
        return this;
    }

    public TestPlan leaderboardPublic() {
        leaderboardPublic = true;
        return this;
    }

    /** The course without its first station: the first movement on the mat starts the clock. */
    public TestPlan firstMovement() {
        startsBySignal = false;
        return this;
    }

    /** The start of the laps is a beam that others cross. */
    public TestPlan beamAtLaps() {
        lapsStart = SensorKind.PHOTO_EYE;
        return this;
    }

    /** Cooling and the medical team must be signed for before the first release. */
    public TestPlan startOfDay() {
        startOfDay =
                List.of(
                        new CheckItem("cooling", text("Cooling is here")),
                        new CheckItem("medical", text("Medical team is here")));
        return this;
    }

    /** A station with ice takes nobody. */
    public TestPlan holdIce() {
        surfaces = new SurfaceRules(List.of(Condition.ICE));
        return this;
    }

    /** Nobody is released before a proof run was signed by two. */
    public TestPlan proofRequired() {
        proofRun = DayRules.ProofRule.REQUIRED;
        return this;
    }

    public TestPlan releaseEvery(long seconds) {
        releaseIntervalMicros = seconds * SECOND;
        return this;
    }

    public ExamPlan make() {
        List<Station> stations = new ArrayList<>(List.of(walk(), drag(), poles(), bag(), fan()));
        stations.add(laps());
        if (!startsBySignal) {
            stations.remove(0);
        }
        return new ExamPlan(
                        new PlanName("test", 1, text("Test plan"), "Nowhere", "Yard 0"),
                        timing(),
                        day(),
                        stations,
                        units())
                .startingWith(startOfDay)
                .holdingBy(surfaces);
    }

    /** The stations' ids in the order of the course. */
    public static List<String> stations() {
        return STATIONS;
    }

    private TimingRules timing() {
        return new TimingRules(
                cutOffMicros,
                TimingRules.Comparison.AT_MOST,
                false,
                TimingRules.Rounding.UP,
                100_000,
                undecided,
                400_000,
                50_000,
                100_000);
    }

    private DayRules day() {
        return new DayRules(
                releaseIntervalMicros,
                startsBySignal ? DayRules.StartKind.SIGNAL : DayRules.StartKind.FIRST_MOVEMENT,
                DayRules.ProctorMode.WITH_CANDIDATE,
                afterFault,
                60 * SECOND,
                120 * SECOND,
                timesOnBoard,
                leaderboardPublic,
                text("Ready?"),
                text("Three blasts"),
                415,
                proofRun);
    }

    private static Station walk() {
        Checkpoint cap = checkpoint("cap", 1, trigger(Combination.JUDGED, none()));
        return station(
                "walk",
                trigger(Combination.SIGNAL, none(), on("u1", 9)),
                List.of(cap),
                trigger(Combination.JUDGED, none(), on("u1", 3)),
                List.of());
    }

    private static Station drag() {
        Guards post = new Guards(0, 0, 0, 0, 100_000, 0, 0, 1, "");
        return station(
                "drag",
                trigger(Combination.SINGLE, stoodFor(300_000), off("u2", 1)),
                List.of(checkpoint("post", 1, trigger(Combination.SINGLE, post, on("u2", 2)))),
                trigger(
                        Combination.SINGLE,
                        new Guards(0, 0, 1_500_000, 0, 0, 0, 0, 1, ""),
                        off("u2", 3)),
                List.of());
    }

    private static Station poles() {
        Trigger each = trigger(Combination.ANY_OF, none(), on("u3", 2), on("u3", 3));
        Guards stays = new Guards(0, SECOND, 0, 0, 0, 0, 0, 1, "");
        return station(
                "poles",
                trigger(Combination.SINGLE, stoodFor(300_000), off("u3", 1)),
                List.of(checkpoint("poles", 2, each)),
                trigger(Combination.ALL_OF, stays, on("u3", 2), on("u3", 3)),
                List.of(off("u3", 2), off("u3", 3)));
    }

    private static Station bag() {
        return station(
                "bag",
                trigger(Combination.SINGLE, none(), off("u4", 1)),
                List.of(checkpoint("top", 1, trigger(Combination.SINGLE, none(), on("u5", 1)))),
                trigger(Combination.SEQUENCE, armedBy("top", 0), on("u5", 1), on("u4", 1)),
                List.of(on("u4", 1)));
    }

    private static Station fan() {
        Guards within = new Guards(0, 0, 0, 0, 0, 0, 2 * SECOND, 1, "");
        return station(
                "fan",
                trigger(Combination.DIRECTION, within, on("u6", 1), on("u6", 2)),
                List.of(checkpoint("hands", 1, trigger(Combination.JUDGED, none()))),
                trigger(Combination.ANY_OF, armedBy("hands", 2 * SECOND), on("u6", 3), on("u6", 4)),
                List.of());
    }

    private static Station laps() {
        return station(
                "laps",
                trigger(
                        Combination.SINGLE,
                        new Guards(SECOND, 0, 0, 0, 0, 50_000, 0, 1, ""),
                        on("u7", 1)),
                List.of(),
                trigger(
                        Combination.SINGLE,
                        new Guards(3 * SECOND, 0, 0, 0, 0, 0, 0, 2, ""),
                        on("u7", 2)),
                List.of());
    }

    private static Station station(
            String id, Trigger start, List<Checkpoint> points, Trigger finish, List<Contact> home) {
        StationTiming timing =
                new StationTiming(20 * SECOND, 5 * SECOND, 120 * SECOND, 10 * SECOND, 5 * SECOND);
        List<Criterion> criteria =
                List.of(
                        new Criterion("must", CriterionKind.REQUIRED, text("must"), 0),
                        new Criterion("rough", CriterionKind.PROHIBITED, text("rough"), 1),
                        new Criterion("once", CriterionKind.PROHIBITED, text("once"), 0),
                        new Criterion("advice", CriterionKind.ADVISED, text("advice"), 0));
        return new Station(
                id, text(id), text("task of " + id), timing, start, points, finish, criteria, home);
    }

    private static Checkpoint checkpoint(String id, int count, Trigger trigger) {
        return new Checkpoint(id, text(id), count, trigger);
    }

    private static Trigger trigger(Combination rule, Guards guards, Contact... contacts) {
        return new Trigger(rule, Arrays.asList(contacts), guards, text(rule.name()));
    }

    private static Guards none() {
        return Guards.NONE;
    }

    private static Guards stoodFor(long micros) {
        return new Guards(0, 0, 0, micros, 0, 0, 0, 1, "");
    }

    private static Guards armedBy(String checkpoint, long lockoutMicros) {
        return new Guards(lockoutMicros, 0, 0, 0, 0, 0, 0, 1, checkpoint);
    }

    private static Contact on(String unit, int sensor) {
        return new Contact(new SensorRef(unit, sensor), 1);
    }

    private static Contact off(String unit, int sensor) {
        return new Contact(new SensorRef(unit, sensor), 0);
    }

    private List<FieldUnit> units() {
        List<FieldUnit> units = new ArrayList<>();
        for (int unit = 1; unit <= 7; unit++) {
            List<SensorPlan> sensors = new ArrayList<>();
            for (int sensor = 1; sensor <= (unit == 1 ? 9 : 4); sensor++) {
                SensorKind kind = sensor > 8 ? SensorKind.HORN : SensorKind.CONTACT;
                kind = unit == 7 && sensor == 1 ? lapsStart : kind;
                kind = unit == 1 && sensor == 8 ? SensorKind.STOP_BUTTON : kind;
                sensors.add(
                        new SensorPlan(sensor, kind, text("s" + sensor), 0, false, false, 2_000));
            }
            units.add(new FieldUnit("u" + unit, text("place " + unit), sensors));
        }
        return units;
    }

    private static Text text(String words) {
        return new Text(words, words);
    }
}
