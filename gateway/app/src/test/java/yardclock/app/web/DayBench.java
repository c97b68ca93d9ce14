package yardclock.app.web;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.access.Doorkeeper;
import yardclock.app.access.FirstCodes;
import yardclock.app.access.Rolls;
import yardclock.app.json.Json;
import yardclock.app.lane.Answer;
import yardclock.app.lane.Troubles;
import yardclock.app.metrics.Meters;
import yardclock.app.records.DaySheet;
import yardclock.app.records.RecordsOffice;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.CheckItem;
import yardclock.core.course.FieldUnit;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.function.Supplier;

/**
 * An exam day over HTTP on the real rules: everyone enrols with a first code, and the test moves
 * gateway time, edges and tablets by hand.
 */
final class DayBench implements AutoCloseable {
    private static final String PAGE = "page-1";
    private static final String BOOT = "00112233445566aa";

    final RulesLane lane = new RulesLane();
    final WebServer server;
    final Map<Role, JsonNode> enrolled = new HashMap<>();
    private final Input.PlanFrozen plan;
    private final Map<String, Long> nextSeq = new HashMap<>();
    private final HttpClient client = HttpClient.newHttpClient();
    private final Meters meters = new Meters();

    DayBench(Path folder) throws Exception {
        plan = new Input.PlanFrozen(DemoPlan.plan().plan(), DemoPlan.plan().sha256());
        lane.give(new Input.Epoch("boot", "process", 0, 0, 1, false, Engine.RULES_VERSION));
        lane.give(plan);
        lane.give(new Input.RosterFrozen(DemoPlan.roster().lines(), DemoPlan.roster().sha256()));
        FirstCodes codes = FirstCodes.in(folder);
        codes.inputs().forEach(lane::give);
        server = new WebServer(ports(), "127.0.0.1", 0);
        lane.frames = server.live();
        server.start();
        for (Role role : Role.values()) {
            String person = role.word() + " Example";
            String body =
                    "{\"code\":\"" + codes.of(role).get(0) + "\",\"person\":\"" + person + "\"}";
            enrolled.put(role, Json.mapper().readTree(post("/api/enrol", null, body).body()));
        }
        plan.plan().fieldUnits().forEach(this::wake);
        enrolled.keySet().forEach(this::compare);
        for (CheckItem item : plan.plan().startOfDay()) {
            rule(Role.SAFETY, "checklist-done", "item", item.id());
        }
    }

    /** A tablet whose clock agrees with the gateway's. */
    private void compare(Role role) {
        long now = lane.micros.get();
        String device = device(role);
        lane.give(
                new Input.TabletExchange(
                        device, PAGE, device, now, now + 500, now + 500, now + 1_000));
        lane.pass(2);
    }

    private WebPorts ports() {
        Doorkeeper keeper = new Doorkeeper(lane, rolls(), lane);
        RecordsOffice office = new RecordsOffice(() -> lane.ask(this::sheet), ZoneOffset.UTC);
        return new WebPorts(
                lane,
                lane,
                lane.feed,
                new Troubles(),
                lane,
                new Doors(keeper::holder, keeper::enrol, keeper::issue),
                new Documents(
                        () -> Optional.of(plan),
                        office::resultsJson,
                        office::resultsCsv,
                        (number, holder) ->
                                lane.ask(e -> OwnCandidate.maySee(e, now(), holder, number))
                                        .thenCompose(may -> telling(office, may, number)),
                        (number, form) ->
                                CompletableFuture.completedFuture(
                                        Answer.of(() -> WebBench.named(form)))),
                known -> lane.ask(engine -> state(known, engine)),
                meters::scrape,
                meters::rejected);
    }

    private Rolls rolls() {
        return new Rolls() {
            @Override
            public CompletionStage<Optional<Holder>> holder(String tokenSha256) {
                return lane.ask(engine -> engine.holder(tokenSha256));
            }

            @Override
            public CompletionStage<Optional<Role>> codeRole(String codeSha256) {
                return lane.ask(engine -> engine.codeRole(codeSha256));
            }
        };
    }

    private static CompletionStage<Answer<Supplier<String>>> telling(
            RecordsOffice office, boolean may, int number) {
        return may
                ? office.telling(number)
                : CompletableFuture.completedFuture(Answer.refused(Refusal.NOT_YOUR_CANDIDATE));
    }

    private View now() {
        return new View(lane.micros.get(), List.of());
    }

    private Optional<DaySheet> sheet(Engine engine) {
        return Optional.of(
                new DaySheet(
                        plan,
                        engine.results(),
                        engine.board(now()).head().heat(),
                        engine.bench(now()).proof().signed(),
                        lane.wall().epochMicros()));
    }

    private static GatewayState state(boolean known, Engine engine) {
        long entries = engine.lastEntry();
        return new GatewayState(known ? engine.digest() : null, entries, entries, 1, "up", "ok");
    }

    /** A unit whose clock agrees with the gateway's, with everything at rest. */
    private void wake(FieldUnit unit) {
        int[] rest = new int[8];
        java.util.Arrays.fill(rest, -1);
        unit.sensors().stream()
                .filter(sensor -> sensor.number() <= 8)
                .forEach(sensor -> rest[sensor.number() - 1] = sensor.restState());
        List<Integer> states = java.util.Arrays.stream(rest).boxed().toList();
        long now = lane.micros.get();
        String id = unit.id();
        lane.give(new Input.ExchangeAnswered(id, BOOT, id, now, now + 500, now + 500, now + 1_000));
        lane.pass(2);
        lane.give(new Input.Health(id, BOOT, now, 0, 3_900, -55, 0, 90_000, "1.0", 1, states, ""));
    }

    /** An edge that happens now. */
    void edge(String unit, int sensor, int state) {
        long seq = nextSeq.merge(unit, 1L, Long::sum) - 1;
        lane.give(new Input.Edge(unit, BOOT, seq, sensor, state, lane.micros.get()));
    }

    /** A ruling by someone of this role; returns the answer. */
    HttpResponse<String> rule(Role role, String act, Object... fields) throws Exception {
        var body = Json.mapper().createObjectNode();
        body.put("key", UUID.randomUUID().toString()).put("boot", PAGE);
        body.put("deviceMicros", lane.micros.get()).put("basis", -1);
        var json = body.putObject("act").put("act", act);
        for (int i = 0; i < fields.length; i += 2) {
            json.set((String) fields[i], Json.mapper().valueToTree(fields[i + 1]));
        }
        return post("/api/rulings", role, body.toString());
    }

    String device(Role role) {
        return enrolled.get(role).path("device").asText();
    }

    HttpRequest.Builder request(String path, Role role) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
        return role == null
                ? request
                : request.header(
                        "Authorization", "Bearer " + enrolled.get(role).path("token").asText());
    }

    HttpResponse<String> get(String path, Role role) throws Exception {
        return client.send(request(path, role).build(), BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, Role role, String json) throws Exception {
        return client.send(
                request(path, role)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(json))
                        .build(),
                BodyHandlers.ofString());
    }

    SseClient listen(String path, Role role) throws Exception {
        return new SseClient(client, request(path, role).build());
    }

    Map<Role, JsonNode> enrolled() {
        return Collections.unmodifiableMap(enrolled);
    }

    @Override
    public void close() {
        server.close();
        lane.close();
    }
}
