package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.http.HandlerType;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import yardclock.core.ruling.Role;

import java.io.InputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Walks every route as every role, as nobody, and with a token nobody was given. */
class RouteRoleWalkTest {
    private static final Set<Integer> TURNED_AWAY = Set.of(401, 403);
    private static WebBench bench;

    @BeforeAll
    static void open() {
        bench = new WebBench();
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    @Test
    void everyRouteOpensToItsRolesAndToNobodyElse() throws Exception {
        List<String> wrong = new ArrayList<>();
        List<Role> askers = new ArrayList<>(Arrays.asList(Role.values()));
        askers.add(null);
        for (Route route : bench.server.routes()) {
            for (Role asker : askers) {
                boolean in = !TURNED_AWAY.contains(status(route, asker));
                if (in != mayPass(route, asker)) {
                    wrong.add(route.method().name() + " " + route.path() + " as " + asker);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(bench.server.routes()).hasSizeGreaterThan(20);
    }

    @Test
    void aTokenNobodyWasGivenOpensNothingThatNeedsOne() throws Exception {
        for (Route route : bench.server.routes()) {
            HttpRequest request =
                    plain(route, null).setHeader("Authorization", "Bearer invented").build();
            boolean in = !TURNED_AWAY.contains(status(request));
            assertThat(in).as(route.path()).isEqualTo(mayPass(route, null));
        }
    }

    @Test
    void theLeaderboardIsPublicOnlyWhenThePlanSaysSo() throws Exception {
        Route board = route("/api/live/leaderboard");
        assertThat(status(board, null)).isEqualTo(401);
        bench.leaderboardPublic = true;
        try {
            assertThat(status(board, null)).isEqualTo(200);
        } finally {
            bench.leaderboardPublic = false;
        }
        assertThat(status(board, null)).isEqualTo(401);
    }

    @Test
    void metricsBehindAForwarderNeedAToken() throws Exception {
        HttpRequest.Builder forwarded =
                bench.request("/metrics", null).header("X-Forwarded-For", "198.51.100.7");
        assertThat(status(forwarded.build())).isEqualTo(401);
        assertThat(status(route("/metrics"), null)).isEqualTo(200);
    }

    @Test
    void aRouteWithoutAPermitCannotBeWritten() {
        assertThatThrownBy(
                        () ->
                                new Route(
                                        HandlerType.GET,
                                        "/open",
                                        EnumSet.noneOf(Permit.class),
                                        request -> {}))
                .hasMessageContaining("/open has no permit");
    }

    private static boolean mayPass(Route route, Role asker) {
        // The bench asks from the same machine, so LOOPBACK is open as well.
        return route.permits().contains(Permit.PUBLIC)
                || route.permits().contains(Permit.LOOPBACK)
                || asker != null && route.permits().contains(Permit.of(asker));
    }

    private static Route route(String path) {
        return bench.server.routes().stream()
                .filter(route -> route.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static int status(Route route, Role asker) throws Exception {
        return status(plain(route, asker).build());
    }

    private static HttpRequest.Builder plain(Route route, Role asker) {
        String path = plainPath(route.path());
        HttpRequest.Builder request = bench.request(path, asker);
        return route.method().equals(HandlerType.POST)
                ? request.header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString("{}"))
                : request;
    }

    private static String plainPath(String path) {
        return path.replace("{number}", "12")
                .replace("{unit}", "fu-99")
                .replace("<path>", "none.js");
    }

    private static int status(HttpRequest request) throws Exception {
        HttpResponse<InputStream> response =
                bench.client.send(request, BodyHandlers.ofInputStream());
        try (InputStream body = response.body()) {
            return response.statusCode();
        }
    }
}
