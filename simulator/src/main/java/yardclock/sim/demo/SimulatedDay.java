package yardclock.sim.demo;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.Roster;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.board.WatchFrame;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.result.Result;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.people.TruthBook;
import yardclock.sim.referee.FeedWatch;
import yardclock.sim.referee.Figures;
import yardclock.sim.referee.JournalEdges;
import yardclock.sim.referee.Referee;
import yardclock.sim.stage.LiveStage;
import yardclock.sim.tablets.Coordinator;
import yardclock.sim.tablets.Crew;
import yardclock.sim.tablets.Gateway;
import yardclock.sim.tablets.Ground;
import yardclock.sim.tablets.LiveTablet;
import yardclock.sim.tablets.PageClock;
import yardclock.sim.tablets.Proctor;
import yardclock.sim.tablets.SafetyOfficer;
import yardclock.sim.tablets.Stream;
import yardclock.sim.tablets.Tablet;
import yardclock.sim.units.UnitCounts;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.weather.ClimateSensor;
import yardclock.sim.yard.Yard;

import java.io.IOException;
import java.net.URI;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;

/**
 * Everybody and everything outside the gateway: field units, weather, candidates, proctors,
 * coordinator, crew, safety officer and referee. Built and begun from one thread against a gateway
 * that is up; then it runs on its stage until closed.
 */
public final class SimulatedDay implements AutoCloseable {
    /** The spare unit, which carries the climate sensor. */
    private static final String CLIMATE_UNIT = "fu-12";

    private final DemoSettings settings;
    private final LiveStage stage;
    private final Gateway gateway;
    private final ExamPlan plan = DemoPlan.plan().plan();
    private final TruthBook book = new TruthBook();
    private final FeedWatch feed;
    private final DayWatch watch;
    private final Yard yard;
    private final Ground ground;
    private final Map<Integer, Candidate> people = new LinkedHashMap<>();
    private final Tablet.Access coordinator;
    private final Map<String, String> codesForPeople;
    private int tablets;

    public SimulatedDay(DemoSettings settings, DayFolder folder, Roster roster)
            throws DemoFailedException {
        this.settings = settings;
        stage = new LiveStage(settings.speed());
        gateway = new Gateway(URI.create("http://" + settings.http()));
        feed = new FeedWatch();
        watch = new DayWatch(roster.lines().size());
        Map<String, VirtualUnit> units =
                FieldUnits.build(
                        stage, plan, settings.brokerUri(), folder.unitPasswords(), settings.seed());
        yard = new Yard(stage, plan, units);
        ground = new Ground(plan, yard, book, settings.seed());
        for (RosterLine line : roster.lines()) {
            CandidateRun run = CandidateRun.draw(settings.seed(), line.number(), plan.stations());
            people.put(line.number(), new Candidate(stage, yard, plan.stations(), run, book));
        }
        Enrolment enrolment = new Enrolment(gateway, folder.firstCodes());
        coordinator = enrolment.coordinator();
        staff(enrolment);
        codesForPeople = enrolment.forPeople(coordinator);
        listenToHorn(units);
        stage.soon(() -> new ClimateSensor(stage, units.get(CLIMATE_UNIT)).begin());
    }

    private void staff(Enrolment enrolment) throws DemoFailedException {
        List<Tablet.Access> proctors = enrolment.proctors();
        for (Tablet.Access access : proctors) {
            Tablet<PostFrame> tablet = tablet(access, "post", PostFrame.class);
            stage.soon(() -> new Proctor(stage, tablet, ground, people::get).begin());
        }
        Tablet<CrewFrame> crew = tablet(enrolment.crew(), "crew", CrewFrame.class);
        stage.soon(() -> new Crew(stage, crew, ground).begin());
        Set<String> devices =
                proctors.stream().map(Tablet.Access::device).collect(Collectors.toSet());
        Tablet<ControlFrame> control = tablet(coordinator, "control", ControlFrame.class);
        stage.soon(() -> new Coordinator(control, devices, watch::sees).begin());
        Tablet<WatchFrame> safety = tablet(enrolment.safety(), "watch", WatchFrame.class);
        stage.soon(() -> new SafetyOfficer(safety).begin());
        Stream facts =
                new Stream(stage, gateway, "/api/feed?after=0", coordinator.token(), feed::take);
        stage.soon(facts::open);
    }

    private <F> Tablet<F> tablet(Tablet.Access access, String page, Class<F> kind) {
        PageClock clock = new PageClock(stage, settings.seed() * 31 + page.hashCode() + tablets++);
        LiveTablet<F> tablet =
                new LiveTablet<>(
                        stage,
                        gateway,
                        access,
                        clock,
                        new LiveTablet.Page<>("/api/live/" + page, kind));
        stage.soon(tablet::reloadNowAndThen);
        return tablet;
    }

    /** Whoever stands at the start hears the horn, however it came to sound. */
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

    public void begin() {
        yard.units().forEach(unit -> stage.soon(unit::powerOn));
        stage.begin();
    }

    /** Completes when every candidate is done and was told. */
    public CompletableFuture<Void> finished() {
        return watch.finished();
    }

    DayWatch watch() {
        return watch;
    }

    LiveStage stage() {
        return stage;
    }

    /** One unused one-time code a role, for people who want to look or to take part. */
    Map<String, String> codesForPeople() {
        return codesForPeople;
    }

    /** What each unit has done; taken on the stage, so that it is of one moment. */
    public List<UnitCounts> unitCounts() throws DemoFailedException {
        CompletableFuture<List<UnitCounts>> counts = new CompletableFuture<>();
        stage.soon(() -> counts.complete(yard.units().stream().map(VirtualUnit::counts).toList()));
        return Enrolment.await(counts);
    }

    /** How many edges were mere chatter or sent more than once. */
    public long repeats(Collection<UnitCounts> counts) {
        long copies = counts.stream().mapToLong(UnitCounts::copiesSent).sum();
        long edges = counts.stream().mapToLong(UnitCounts::edges).sum();
        return yard.bounces() + Math.max(0, copies - edges);
    }

    public VirtualUnit unit(String id) {
        return yard.units().stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    /** What the gateway says of itself at one moment: entries and digest. */
    public JsonNode state() throws DemoFailedException {
        return Enrolment.await(gateway.get("/api/state", coordinator.token())).body();
    }

    public List<Result> results() throws DemoFailedException {
        Gateway.Answer answer =
                Enrolment.await(gateway.get("/api/results.json", coordinator.token()));
        try {
            return Json.mapper()
                    .readerFor(new TypeReference<List<Result>>() {})
                    .readValue(answer.body().path("results").traverse(Json.mapper()));
        } catch (IOException e) {
            throw new DemoFailedException("The results cannot be read: " + answer.body(), e);
        }
    }

    public Figures figures(JournalEdges journal, List<UnitCounts> units, String digest)
            throws DemoFailedException {
        long ahead =
                yard.units().stream().mapToLong(VirtualUnit::aheadOfGatewayMicros).min().orElse(0);
        return new Referee(book, feed, ahead, settings.speed())
                .judge(results(), units, journal, digest);
    }

    @Override
    public void close() {
        yard.units().forEach(VirtualUnit::powerOff);
        gateway.close();
        stage.close();
    }
}
