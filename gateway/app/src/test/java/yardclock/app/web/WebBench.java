package yardclock.app.web;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Answer;
import yardclock.app.lane.FeedRing;
import yardclock.app.lane.Troubles;
import yardclock.app.settings.DemoPlan;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.Head;
import yardclock.core.board.HeatView;
import yardclock.core.engine.Engine.View;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;

/** A real server on a free port with a fake lane behind it, and a client that talks to it. */
final class WebBench implements AutoCloseable {
    static final String CODE = "GOODCODE";

    final FakeLane lane = new FakeLane();
    final FeedRing feed = new FeedRing();
    final AtomicLong frames = new AtomicLong();
    final List<String> refused = new CopyOnWriteArrayList<>();
    final Map<String, Holder> holders = new ConcurrentHashMap<>();
    volatile boolean planFrozen = true;
    volatile boolean leaderboardPublic;
    volatile String padding = "";
    volatile Function<DossierForm, Optional<InputStream>> dossiers = WebBench::named;
    final WebServer server;
    final HttpClient client = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();

    WebBench() {
        this(WebLimits.IDLE_MILLIS);
    }

    WebBench(int idleMillis) {
        for (Role role : Role.values()) {
            holders.put(role.word() + "-token", new Holder("t-" + role.word(), "A. Person", role));
        }
        server =
                new WebServer(
                        ports(),
                        new WebAddress("127.0.0.1", 0, null),
                        (e, view, a) -> paint(view, a),
                        idleMillis);
        server.start();
    }

    private Painter.Painted paint(View view, Audience audience) {
        long number = frames.incrementAndGet();
        HeatView heat = new HeatView(0, "low", 800, 2_600, 5_000, 1_000_000, "index");
        String words = audience.device() + padding;
        Head head =
                new Head(
                        number,
                        view.gatewayMicros(),
                        0,
                        1,
                        Head.CourseStatus.RUNNING,
                        words,
                        List.of(),
                        heat,
                        view.troubles());
        return new Painter.Painted(number, new BoardFrame(head, List.of(), List.of()));
    }

    private WebPorts ports() {
        return new WebPorts(
                lane,
                lane,
                feed,
                new Troubles(),
                new BenchClock(),
                new Doors(this::holder, this::enrol, this::issue),
                documents(),
                known -> done(new GatewayState(known ? "d1" : null, 7, 7, 1, "up", "ok")),
                () -> "yardclock_edges_total 1\n",
                refused::add);
    }

    private Documents documents() {
        return new Documents(
                this::plan,
                () -> done(Answer.of(() -> "{\"results\":[]}".getBytes(StandardCharsets.UTF_8))),
                () -> done(Answer.of(() -> "number\r\n".getBytes(StandardCharsets.UTF_8))),
                (number, holder) ->
                        done(
                                number == 12
                                        ? Answer.of(() -> "<p>sheet</p>")
                                        : Answer.refused(Refusal.UNKNOWN_NUMBER)),
                (number, form) ->
                        done(
                                number == 12
                                        ? Answer.of(() -> dossiers.apply(form))
                                        : Answer.refused(Refusal.UNKNOWN_NUMBER)));
    }

    /** A dossier that is nothing but the name of its form. */
    static Optional<InputStream> named(DossierForm form) {
        return Optional.of(new ByteArrayInputStream(form.name().getBytes(StandardCharsets.UTF_8)));
    }

    private Optional<Input.PlanFrozen> plan() {
        var demo = DemoPlan.plan();
        var plan = leaderboardPublic ? Plans.withPublicLeaderboard(demo.plan()) : demo.plan();
        return planFrozen
                ? Optional.of(new Input.PlanFrozen(plan, demo.sha256()))
                : Optional.empty();
    }

    private CompletableFuture<Answer<Optional<Holder>>> holder(String token) {
        return done(Answer.of(Optional.ofNullable(holders.get(token))));
    }

    private CompletableFuture<Answer<Map<String, String>>> enrol(String code, String person) {
        return done(
                code.equals(CODE)
                        ? Answer.of(Map.of("token", "new", "device", "t-new", "role", "proctor"))
                        : Answer.refused(Refusal.UNKNOWN_CODE));
    }

    private CompletableFuture<Answer<Map<String, String>>> issue(Role role, String issuer) {
        return done(Answer.of(Map.of("code", "ABCDEFGH")));
    }

    private static <T> CompletableFuture<T> done(T value) {
        return CompletableFuture.completedFuture(value);
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    HttpRequest.Builder request(String path, Role role) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address(path))).timeout(Duration.ofSeconds(15));
        return role == null
                ? request
                : request.header("Authorization", "Bearer " + role.word() + "-token");
    }

    HttpResponse<String> get(String path, Role role) throws Exception {
        return send(request(path, role).build());
    }

    HttpResponse<String> post(String path, Role role, String json) throws Exception {
        return send(
                request(path, role)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(json))
                        .build());
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, BodyHandlers.ofString());
    }

    @Override
    public void close() {
        server.close();
        lane.close();
    }

    /** A clock that stands at one exam second and goes on by a microsecond each time it is read. */
    private static final class BenchClock implements GatewayClock {
        private final AtomicLong micros = new AtomicLong(1_000_000);

        @Override
        public GatewayTime now() {
            return new GatewayTime(micros.incrementAndGet());
        }

        @Override
        public WallTime wall() {
            return new WallTime(0);
        }

        @Override
        public int speed() {
            return 1;
        }

        @Override
        public long realNanos() {
            return System.nanoTime();
        }
    }
}
