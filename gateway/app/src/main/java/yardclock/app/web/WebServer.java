package yardclock.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;

import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.core.engine.Input;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The gateway's HTTP server. Made and started once, from the start-up thread; {@link #live()} is
 * the lane's frame sink and may be handed over before the start.
 */
public final class WebServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);

    private static final Set<HandlerType> METHODS = Set.of(HandlerType.GET, HandlerType.POST);

    private final TabletExchanges exchanges;
    private final LiveStreams live;
    private final Bodies bodies;
    private final Refusals refusals;
    private final HostCheck hosts;
    private final Gate gate;
    private final List<Route> routes;
    private final Javalin javalin;
    private final int idleMillis;

    /** A server at this address, unencrypted; port 0 takes any free one. */
    public WebServer(WebPorts ports, String host, int port) {
        this(ports, new WebAddress(host, port, null), List::of);
    }

    /**
     * @param benchNotes sentences for the technician that the state does not know of, newest first;
     *     asked on the lane's thread, so it must be quick
     */
    public WebServer(WebPorts ports, WebAddress at, Supplier<List<String>> benchNotes) {
        this(ports, at, Painter.ofEngine(benchNotes), WebLimits.IDLE_MILLIS);
    }

    WebServer(WebPorts ports, WebAddress at, Painter painter, int idleMillis) {
        this.idleMillis = idleMillis;
        this.hosts = new HostCheck(ownNames(at));
        this.exchanges = exchanges(ports.clock());
        this.live = new LiveStreams(painter, exchanges);
        this.refusals = new Refusals(ports.refused());
        this.bodies = new Bodies(refusals, () -> ports.clock().now().micros());
        this.gate = new Gate(ports.doors().holder(), () -> isLeaderboardPublic(ports), refusals);
        this.routes = Routes.of(desks(ports));
        this.javalin = Javalin.create(config -> configure(config, at));
    }

    private Routes.Desks desks(WebPorts ports) {
        Commits commits = new Commits(ports.inbox(), refusals);
        return new Routes.Desks(
                new EnrolDesk(ports.doors(), bodies, refusals),
                new RulingDesk(commits, bodies, refusals),
                new TabletClockDesk(exchanges, live, bodies, commits, refusals),
                new LiveDesk(live, ports, refusals),
                new ClockDesk(ports, refusals),
                new RejudgeDesk(ports, bodies, refusals),
                new PaperDesk(ports, refusals),
                new FileDesk(new WebFiles(), refusals));
    }

    private static TabletExchanges exchanges(GatewayClock clock) {
        SecureRandom random = new SecureRandom();
        return new TabletExchanges(
                clock, random, () -> HexFormat.of().toHexDigits(random.nextLong()));
    }

    private static boolean isLeaderboardPublic(WebPorts ports) {
        return ports.documents()
                .plan()
                .get()
                .map(Input.PlanFrozen::plan)
                .map(plan -> plan.day().leaderboardPublic())
                .orElse(false);
    }

    private void configure(JavalinConfig config, WebAddress at) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = WebLimits.BODY_BYTES;
        config.jetty.host = at.host();
        config.jetty.port = at.port();
        if (at.isEncrypted()) {
            config.jetty.addConnector((server, http) -> Encryption.connector(server, http, at));
        }
        config.jetty.threadPool = new QueuedThreadPool(WebLimits.THREADS, WebLimits.THREADS_MIN);
        config.jetty.modifyServer(this::configure);
        config.jetty.modifyHttpConfiguration(WebServer::configure);
        config.router.javaLangErrorHandler((response, error) -> LOG.error("request failed", error));
        config.routes.before(this::before);
        config.routes.beforeMatched(gate::check);
        for (Route route : routes) {
            config.routes.addHttpHandler(
                    route.method(),
                    route.path(),
                    route.handler(),
                    route.permits().toArray(Permit[]::new));
        }
        config.routes.exception(HttpResponseException.class, this::refuse);
        config.routes.exception(Exception.class, this::fail);
    }

    private void configure(Server server) {
        server.setStopTimeout(WebLimits.STOP_MILLIS);
        server.setErrorHandler(new ErrorAnswers());
    }

    private static void configure(HttpConfiguration http) {
        http.setRequestHeaderSize(WebLimits.HEADER_BYTES);
        http.setSendServerVersion(false);
        http.setSendDateHeader(true);
    }

    private void before(Context request) {
        bodies.arrived(request);
        PageHeaders.set(request);
        if (!hosts.isOurs(request)) {
            refusals.refuse(request, WebRefusal.WRONG_HOST);
        } else if (!hosts.isFromOurPage(request)) {
            refusals.refuse(request, WebRefusal.WRONG_ORIGIN);
        } else if (!METHODS.contains(request.method())) {
            request.header("Allow", "GET, POST");
            refusals.refuse(request, WebRefusal.METHOD_NOT_HERE);
        }
    }

    private void refuse(HttpResponseException refused, Context request) {
        if (refused instanceof MethodNotAllowedResponse) {
            // Every address of the table has exactly one method.
            request.header("Allow", request.method().equals(HandlerType.GET) ? "POST" : "GET");
        }
        refusals.refuse(request, WebRefusal.ofStatus(refused.getStatus()));
    }

    private void fail(Exception trouble, Context request) {
        LOG.error("{} {} failed", request.method(), request.path(), trouble);
        refusals.refuse(request, WebRefusal.TROUBLE_INSIDE);
    }

    /** Opens the port. Refuses to start when what the server would answer is not the table. */
    public void start() {
        requireOnlyTheTable();
        javalin.start();
        for (var connector : javalin.jettyServer().server().getConnectors()) {
            ServerConnector served = (ServerConnector) connector;
            served.setIdleTimeout(idleMillis);
            served.setShutdownIdleTimeout(WebLimits.STOP_IDLE_MILLIS);
        }
    }

    private void requireOnlyTheTable() {
        Set<String> served =
                javalin.unsafe.internalRouter.allHttpHandlers().stream()
                        .map(entry -> entry.endpoint)
                        .filter(endpoint -> endpoint.method.isHttpMethod())
                        .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> listed =
                routes.stream()
                        .map(route -> route.method().name() + " " + route.path())
                        .collect(Collectors.toCollection(TreeSet::new));
        if (!served.equals(listed) || listed.size() != routes.size()) {
            throw new IllegalStateException("served " + served + " but listed " + listed);
        }
    }

    public int port() {
        return javalin.port();
    }

    /** Where the lane hands in its frames. */
    public LiveStreams live() {
        return live;
    }

    List<Route> routes() {
        return routes;
    }

    /** Ends the streams first, so that no open one holds the stop up. */
    @Override
    public void close() {
        live.close();
        javalin.stop();
    }

    private static Set<String> ownNames(WebAddress at) {
        Set<String> names = new TreeSet<>();
        if (at.isEncrypted()) {
            names.addAll(at.certificate().hostNames());
        }
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            names.add(name);
            names.add(name + ".local");
        } catch (UnknownHostException e) {
            LOG.info("this machine has no name of its own: pages go by its number address");
        }
        return names;
    }
}
