package yardclock.sim.twin;

import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.LoadedPlan;
import yardclock.core.board.ControlFrame;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.RosterLine;
import yardclock.core.course.Station;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Fact;
import yardclock.core.result.Result;
import yardclock.core.ruling.Role;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.people.TruthBook;
import yardclock.sim.referee.EdgeCount;
import yardclock.sim.referee.RoughFigures;
import yardclock.sim.referee.RoughReferee;
import yardclock.sim.referee.Witness;
import yardclock.sim.rough.Outages;
import yardclock.sim.rough.RoughRun;
import yardclock.sim.rough.Strays;
import yardclock.sim.stage.VirtualStage;
import yardclock.sim.tablets.Coordinator;
import yardclock.sim.tablets.Crew;
import yardclock.sim.tablets.Ground;
import yardclock.sim.tablets.PageClock;
import yardclock.sim.tablets.Proctor;
import yardclock.sim.tablets.SafetyOfficer;
import yardclock.sim.tablets.Tablet;
import yardclock.sim.units.UnitCounts;
import yardclock.sim.units.UnitSettings;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.yard.Diary;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BiFunction;

/**
 * A whole exam day in virtual time, drawn from a seed. Built, run to its end and asked from one
 * thread.
 */
public final class TwinDay {
    /** Clocks are compared for a while before anybody is called. */
    private static final long MORNING_MICROS = 60_000_000;

    private static final long LONGEST_MICROS = 16L * 3_600 * 1_000_000;

    /** The longest outage and some time to send what was kept. */
    private static final long DELIVERY_MICROS = 600_000_000;

    /** Without news, people look again after so long. */
    private static final long QUIET_MICROS = 5_000_000;

    private static final int PROCTORS = 5;

    private final VirtualStage stage = new VirtualStage(1);
    private final LoadedPlan loaded = DemoPlan.plan();
    private final ExamPlan plan = loaded.plan();
    private final TruthBook book = new TruthBook();
    private final SplittableRandom random;
    private final long seed;
    private final int candidates;
    private final TwinGateway gateway;
    private final Map<Integer, Candidate> people = new LinkedHashMap<>();
    private final List<TwinTablet<?>> tablets = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final Scenario scenario;
    private final Map<String, TwinLink> links = new LinkedHashMap<>();
    private final Yard yard;
    private final Strays strays;
    private final Outages outages;
    private final Witness witness = new Witness();
    private final List<Diary.Happening> diary = new ArrayList<>();
    private boolean isNews = true;
    private long drawnMicros;
    private boolean over;

    public TwinDay(long seed, int candidates) {
        this(seed, candidates, Scenario.KIND);
    }

    public TwinDay(long seed, int candidates, Scenario scenario) {
        this.seed = seed;
        this.candidates = candidates;
        this.scenario = scenario;
        this.random = new SplittableRandom(seed);
        Air air = new Air(stage, random.split());
        this.gateway = new TwinGateway(stage, plan, air, sinks(), random.nextLong());
        gateway.begin();
        Map<String, VirtualUnit> units = new LinkedHashMap<>();
        for (FieldUnit planned : plan.fieldUnits()) {
            UnitSettings settings = settings(planned);
            TwinLink link = air.linkOf(planned.id(), air.path());
            links.put(planned.id(), link);
            units.put(planned.id(), new VirtualUnit(stage, settings, link, name()));
        }
        this.yard = new Yard(stage, plan, units);
        Ground ground = new Ground(plan, yard, book, seed);
        for (RosterLine line : roster()) {
            CandidateRun run = run(line.number());
            people.put(line.number(), new Candidate(stage, yard, plan.stations(), run, book));
        }
        units.values().forEach(VirtualUnit::powerOn);
        listenToHorn(units);
        stage.afterMicros(MORNING_MICROS, () -> staff(air, ground));
        this.strays = new Strays(stage, yard, plan, seed);
        this.outages =
                new Outages(
                        stage,
                        plan,
                        candidates,
                        seed,
                        (id, micros) -> links.get(id).loseFor(micros));
        if (scenario == Scenario.ROUGH) {
            yard.keeps(diary::add);
            stage.afterMicros(MORNING_MICROS, strays::begin);
            stage.afterMicros(MORNING_MICROS, () -> outages.begin(yard));
        }
    }

    private UnitSettings settings(FieldUnit planned) {
        UnitSettings steady = UnitSettings.of(planned, seed);
        return scenario == Scenario.ROUGH ? steady.drifting() : steady;
    }

    private CandidateRun run(int number) {
        return scenario == Scenario.ROUGH
                ? RoughRun.draw(seed, number, plan)
                : CandidateRun.draw(seed, number, plan.stations());
    }

    private TwinGateway.Sinks sinks() {
        List<Input> morning = new ArrayList<>();
        morning.add(new Input.PlanFrozen(plan, loaded.sha256()));
        morning.add(new Input.RosterFrozen(roster(), "roster"));
        return new TwinGateway.Sinks(morning, this::draw, this::applied);
    }

    private List<RosterLine> roster() {
        List<RosterLine> lines = new ArrayList<>();
        for (int number = 1; number <= candidates; number++) {
            lines.add(new RosterLine(number, 1 + (number - 1) / 11));
        }
        return lines;
    }

    private String name() {
        return HexFormat.of().toHexDigits(random.nextLong());
    }

    private void listenToHorn(Map<String, VirtualUnit> units) {
        for (Contact horn : plan.stations().get(0).start().contacts()) {
            units.get(horn.sensor().unit())
                    .onShown(
                            (what, at) -> {
                                if (what.equals("start")) {
                                    people.values().forEach(person -> person.hears(at));
                                }
                            });
        }
    }

    private void staff(Air air, Ground ground) {
        Set<String> devices = new LinkedHashSet<>();
        for (int i = 1; i <= PROCTORS; i++) {
            Tablet.Access access = enrol("proctor-" + i, Role.PROCTOR);
            devices.add(access.device());
            var tablet = tablet(air, access, (e, view) -> e.post(view, access.device()));
            var witnessed = new Witnessed(stage, tablet, witness);
            new Proctor(stage, witnessed, ground, people::get).begin();
        }
        var crew = tablet(air, enrol("crew-1", Role.CREW), Engine::crew);
        new Crew(stage, crew, ground).begin();
        var control = tablet(air, enrol("control-1", Role.COORDINATOR), Engine::control);
        new Coordinator(control, devices, this::watch).begin();
        var safety = tablet(air, enrol("safety-1", Role.SAFETY), Engine::watch);
        new SafetyOfficer(safety).begin();
        isNews = true;
    }

    private Tablet.Access enrol(String device, Role role) {
        String code = "code-" + device;
        gateway.offer(new Input.CodeIssued(code, role, ""), outcome -> {});
        gateway.offer(new Input.Enrolled(device, device, role, code, device), outcome -> {});
        return new Tablet.Access(device, device, role.word());
    }

    private <F> TwinTablet<F> tablet(
            Air air, Tablet.Access access, BiFunction<Engine, Engine.View, F> projection) {
        PageClock clock = new PageClock(stage, random.nextLong(), this::name);
        TwinTablet<F> tablet =
                new TwinTablet<>(
                        new TwinTablet.Parts(stage, gateway, access, clock, air.path()),
                        projection);
        tablets.add(tablet);
        return tablet;
    }

    private void applied(Entry entry, Outcome outcome) {
        facts.addAll(outcome.facts());
        outcome.facts().forEach(witness::reads);
        boolean isQuiet =
                entry.input() instanceof Input.Health
                        || entry.input() instanceof Input.ExchangeAnswered
                        || entry.input() instanceof Input.TabletExchange;
        isNews |= !isQuiet || outcome.facts().stream().anyMatch(f -> f.kind().onFeed());
    }

    /** Nobody looks at a frame that shows what the last one did, unless after a while. */
    private void draw(Engine engine, Engine.View view) {
        if (isNews || view.gatewayMicros() - drawnMicros >= QUIET_MICROS) {
            isNews = false;
            drawnMicros = view.gatewayMicros();
            tablets.forEach(tablet -> tablet.draw(engine, view));
        }
    }

    private void watch(ControlFrame frame) {
        long told = frame.done().stream().filter(ControlFrame.DoneView::told).count();
        over = frame.waiting().isEmpty() && frame.onCourse().isEmpty() && told >= candidates;
    }

    /** Plays the day to its end; whether it came to one. */
    public boolean play() {
        while (!over && stage.step(LONGEST_MICROS)) {
            // the stage plays
        }
        if (scenario == Scenario.ROUGH) {
            strays.end();
            deliver(stage.nowMicros() + DELIVERY_MICROS);
        }
        return over;
    }

    /** Boards that were out of reach at the end still hand in what they stamped. */
    private void deliver(long untilMicros) {
        while (yard.units().stream().anyMatch(TwinDay::waits) && stage.step(untilMicros)) {
            // the stage plays on
        }
    }

    private static boolean waits(VirtualUnit unit) {
        UnitCounts counts = unit.counts();
        return counts.kept() + 1 < counts.edges();
    }

    public TwinFigures figures() {
        return TwinFigures.of(seed, this);
    }

    /** Judges a rough day that was played. */
    public RoughReferee referee() {
        return new RoughReferee(book, witness, diary);
    }

    /**
     * @param wallMillis how long playing it took
     */
    public RoughFigures roughFigures(long wallMillis) {
        return referee().figures(counted(wallMillis));
    }

    private RoughReferee.Counted counted(long wallMillis) {
        EdgeCount edgeCount = EdgeCount.of(gateway.journal(), gateway.ask(Engine::edgeCauses));
        long stamped = yard.units().stream().mapToLong(unit -> unit.counts().edges()).sum();
        return new RoughReferee.Counted(
                seed,
                candidates,
                passages(),
                strays.strays(),
                outages.outages(),
                edgeCount.edges(),
                edgeCount.by(),
                edgeCount.unaccounted(),
                stamped - edgeCount.edges(),
                wallMillis);
    }

    /** How often a candidate came by a trigger that has a sensor. */
    private int passages() {
        int passages = 0;
        for (var visit : book.all().entrySet()) {
            Station station = plan.station(visit.getKey().station()).orElseThrow();
            int sensed =
                    station.checkpoints().stream()
                            .filter(checkpoint -> !checkpoint.trigger().contacts().isEmpty())
                            .mapToInt(Checkpoint::count)
                            .sum();
            passages += visit.getValue().split().isPresent() ? 2 + sensed : 1;
        }
        return passages;
    }

    long examMicros() {
        return stage.nowMicros();
    }

    List<Result> results() {
        return gateway.ask(Engine::results);
    }

    List<Entry> journal() {
        return gateway.journal();
    }

    List<Fact> facts() {
        return List.copyOf(facts);
    }

    TruthBook book() {
        return book;
    }
}
