package yardclock.app.web;

import static yardclock.app.web.Permit.COORDINATOR;
import static yardclock.app.web.Permit.CREW;
import static yardclock.app.web.Permit.LOOPBACK;
import static yardclock.app.web.Permit.PROCTOR;
import static yardclock.app.web.Permit.PUBLIC;
import static yardclock.app.web.Permit.PUBLIC_BY_PLAN;
import static yardclock.app.web.Permit.SAFETY;
import static yardclock.app.web.Permit.TECHNICIAN;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

import yardclock.app.web.Audience.Kind;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The one table of everything that can be asked for, and who may.
 *
 * <p>To add an address, add a line here, and describe it in {@code yardclock/openapi.yaml}: a test
 * compares the two.
 */
final class Routes {
    private static final Set<Permit> ANYONE = EnumSet.of(PUBLIC);
    private static final Set<Permit> STAFF =
            EnumSet.of(COORDINATOR, TECHNICIAN, PROCTOR, CREW, SAFETY);

    private static final List<String> PAGES =
            List.of(
                    "/",
                    "/enrol",
                    "/control",
                    "/post",
                    "/crew",
                    "/watch",
                    "/board",
                    "/bench",
                    "/leaderboard");

    private final List<Route> table = new ArrayList<>();

    private Routes() {}

    /** What answers the requests. */
    record Desks(
            EnrolDesk enrol,
            RulingDesk ruling,
            TabletClockDesk tabletClock,
            LiveDesk live,
            ClockDesk clock,
            RejudgeDesk rejudge,
            PaperDesk paper,
            FileDesk files) {}

    static List<Route> of(Desks desks) {
        Routes routes = new Routes();
        routes.access(desks);
        routes.live(desks.live());
        routes.get("/api/clock/{unit}", EnumSet.of(TECHNICIAN, COORDINATOR), desks.clock()::clock);
        Set<Permit> bench = EnumSet.of(TECHNICIAN, COORDINATOR);
        routes.post("/api/bench/rejudge", bench, desks.rejudge()::ask);
        routes.paper(desks.paper());
        routes.pages(desks.files());
        return List.copyOf(routes.table);
    }

    private void access(Desks desks) {
        post("/api/enrol", ANYONE, desks.enrol()::enrol);
        post("/api/codes", EnumSet.of(COORDINATOR), desks.enrol()::makeCode);
        // Which acts a role may do is ActKind's table; any staff may stop the course.
        post("/api/rulings", STAFF, desks.ruling()::take);
        post("/api/clock", STAFF, desks.tabletClock()::take);
        post("/api/clock-wanted", STAFF, desks.tabletClock()::wanted);
    }

    private void live(LiveDesk desk) {
        live(desk, Kind.CONTROL, EnumSet.of(COORDINATOR, SAFETY));
        live(desk, Kind.POST, EnumSet.of(PROCTOR));
        live(desk, Kind.CREW, EnumSet.of(CREW, COORDINATOR));
        live(desk, Kind.WATCH, EnumSet.of(SAFETY, COORDINATOR));
        live(desk, Kind.BOARD, ANYONE);
        live(desk, Kind.BENCH, EnumSet.of(TECHNICIAN, COORDINATOR));
        live(desk, Kind.LEADERBOARD, EnumSet.of(COORDINATOR, TECHNICIAN, SAFETY, PUBLIC_BY_PLAN));
        get("/api/feed", STAFF, desk::feed);
    }

    private void live(LiveDesk desk, Kind kind, Set<Permit> permits) {
        get("/api/live/" + kind.word(), permits, request -> desk.frames(request, kind));
    }

    private void paper(PaperDesk desk) {
        get("/api/plan", STAFF, desk::plan);
        get("/api/results.json", EnumSet.of(COORDINATOR, SAFETY), desk::resultsJson);
        get("/api/results.csv", EnumSet.of(COORDINATOR, SAFETY), desk::resultsCsv);
        get("/api/telling/{number}", EnumSet.of(COORDINATOR, PROCTOR), desk::telling);
        get("/api/dossier/{number}", EnumSet.of(COORDINATOR), desk::dossier);
        get("/api/state", ANYONE, desk::state);
        Set<Permit> staffOrHere = EnumSet.copyOf(STAFF);
        staffOrHere.add(LOOPBACK);
        get("/metrics", staffOrHere, desk::metrics);
    }

    private void pages(FileDesk desk) {
        // One shell for every page; it looks at the address itself.
        for (String page : PAGES) {
            get(page, ANYONE, desk::page);
        }
        // At the top, because a worker may only serve what lies beneath it.
        get("/post-worker.js", ANYONE, desk::postWorker);
        get("/ui/<path>", ANYONE, desk::own);
        get("/webjars/<path>", ANYONE, desk::library);
        get("/openapi.yaml", ANYONE, desk::description);
    }

    private void get(String path, Set<Permit> permits, Handler handler) {
        table.add(new Route(HandlerType.GET, path, permits, handler));
    }

    private void post(String path, Set<Permit> permits, Handler handler) {
        table.add(new Route(HandlerType.POST, path, permits, handler));
    }
}
