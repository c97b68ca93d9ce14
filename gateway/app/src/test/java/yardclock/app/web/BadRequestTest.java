package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;

import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;

import yardclock.core.engine.Input;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;
import yardclock.core.ruling.Verdict;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Each kind of bad input gets one clear refusal, and the next good request is served. */
class BadRequestTest extends WithRefusals {
    private static final String TAP =
            "{\"act\":\"tap\",\"number\":12,\"station\":\"low-deck\",\"point\":\"start\"}";

    private void refusedRuling(String body, int status, String reason) throws Exception {
        refused(bench.post("/api/rulings", Role.PROCTOR, body), status, reason);
        assertThat(bench.lane.taken()).isEmpty();
    }

    @Test
    void aGoodRulingIsTakenWithItsDeviceAndItsTime() throws Exception {
        bench.lane.rules = input -> Verdict.accepted(123);
        HttpResponse<String> answer = bench.post("/api/rulings", Role.PROCTOR, ruling(TAP));
        assertThat(answer.body()).isEqualTo("{\"accepted\":true,\"entry\":123}");
        Input.Ruling taken = (Input.Ruling) bench.lane.taken().get(0);
        assertThat(taken.device()).isEqualTo("t-proctor");
        assertThat(taken.deviceMicros()).isEqualTo(5);
        assertThat(taken.receivedMicros()).isGreaterThan(1_000_000);
        assertThat(taken.act()).isEqualTo(new Act.Tap(12, "low-deck", "start"));
    }

    @Test
    void whatIsNotJsonIsMalformed() throws Exception {
        for (String body : List.of("", "{", "[]", "12", "\"x\"", "null", "{} {}", "{\"a\":NaN}")) {
            refusedRuling(body, 400, "malformed");
        }
        refusedRuling("[".repeat(5_000), 400, "malformed");
    }

    @Test
    void whatIsMissingOrOutOfBoundsIsNamed() throws Exception {
        refusedRuling("{}", 400, "malformed");
        refusedRuling(ruling("null"), 400, "malformed");
        refusedRuling(ruling("{\"act\":\"fly\"}"), 400, "malformed");
        refusedRuling(ruling(TAP.replace("12", "\"12\"")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("12", "12.5")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("12", "-1")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("12", "1e30")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("12", "99999999999999999999")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("\"low-deck\"", "null")), 400, "malformed");
        refusedRuling(ruling(TAP.replace("low-deck", "x".repeat(65))), 400, "malformed");
        refusedRuling(ruling(TAP.replace("low-deck", "\\u0000")), 400, "malformed");
        refusedRuling(ruling(TAP).replace("\"k1\"", "\"\""), 400, "malformed");
        refusedRuling(ruling(TAP).replace("\"basis\":-1", "\"basis\":-2"), 400, "malformed");
        HttpResponse<String> named =
                bench.post("/api/rulings", Role.PROCTOR, ruling(TAP.replace("12", "-1")));
        assertThat(named.body()).contains("“number” must be a whole number from 0 to 99999.");
    }

    @Test
    void wordsMayBeLeftOutButNotBeEndless() throws Exception {
        String hold = "{\"act\":\"hold-candidate\",\"number\":12,\"reason\":\"medical\"}";
        assertThat(bench.post("/api/rulings", Role.PROCTOR, ruling(hold)).statusCode())
                .isEqualTo(200);
        Input.Ruling taken = (Input.Ruling) bench.lane.taken().get(0);
        assertThat(((Act.HoldCandidate) taken.act()).words()).isEmpty();
        String endless = hold.replace("}", ",\"words\":\"" + "w".repeat(501) + "\"}");
        refused(bench.post("/api/rulings", Role.PROCTOR, ruling(endless)), 400, "malformed");
    }

    @Test
    void anActOfAnotherRoleIsRefused() throws Exception {
        String release = "{\"act\":\"release\",\"number\":12,\"proctorDevice\":\"t-proctor\"}";
        refusedRuling(ruling(release), 403, "not-your-role");
    }

    @Test
    void whatTheRulesRefuseKeepsTheirReasonAndWords() throws Exception {
        bench.lane.rules = input -> Verdict.refused(Refusal.ALREADY_RULED, 9);
        HttpResponse<String> answer = bench.post("/api/rulings", Role.PROCTOR, ruling(TAP));
        refused(answer, 409, "already-ruled");
        assertThat(answer.body()).contains(Refusal.ALREADY_RULED.words());
    }

    @Test
    void aBodyOverTheLimitIsTooLarge() throws Exception {
        String large = "{\"key\":\"" + "k".repeat(WebLimits.BODY_BYTES) + "\"}";
        refusedRuling(large, 413, "too-large");
        HttpRequest unannounced =
                bench.request("/api/rulings", Role.PROCTOR)
                        .header("Content-Type", "application/json")
                        .POST(
                                BodyPublishers.ofInputStream(
                                        () ->
                                                new java.io.ByteArrayInputStream(
                                                        large.getBytes(StandardCharsets.UTF_8))))
                        .build();
        refused(bench.send(unannounced), 413, "too-large");
    }

    @Test
    void aBodyThatDoesNotSayItIsJsonIsRefused() throws Exception {
        HttpRequest form =
                bench.request("/api/rulings", Role.PROCTOR)
                        .header("Content-Type", "text/plain")
                        .POST(BodyPublishers.ofString(ruling(TAP)))
                        .build();
        refused(bench.send(form), 415, "not-json");
    }

    @Test
    void troubleOfTheGatewayIsSaidAsSuch() throws Exception {
        bench.lane.lost = "The disk is full: nothing is taken.";
        HttpResponse<String> lost = bench.post("/api/rulings", Role.PROCTOR, ruling(TAP));
        refused(lost, 503, "journal-trouble");
        assertThat(lost.body()).contains("The disk is full");
        bench.lane.lost = null;
        bench.lane.full = true;
        refused(bench.post("/api/rulings", Role.PROCTOR, ruling(TAP)), 503, "busy");
        bench.lane.full = false;
        bench.lane.rules =
                input -> {
                    throw new IllegalStateException("broken");
                };
        assertThat(bench.post("/api/rulings", Role.PROCTOR, ruling("{}")).statusCode())
                .isEqualTo(400);
    }

    @Test
    void anUnknownAddressOrMethodIsRefusedInTheSameForm() throws Exception {
        refused(bench.get("/nowhere", null), 404, "not-found");
        refused(bench.get("/api/nowhere", Role.COORDINATOR), 404, "not-found");
        refused(bench.post("/api/state", null, "{}"), 405, "method-not-here");
        HttpResponse<String> rulings = bench.get("/api/rulings", Role.PROCTOR);
        refused(rulings, 405, "method-not-here");
        assertThat(rulings.headers().firstValue("Allow")).contains("POST");
        HttpRequest delete = bench.request("/api/plan", Role.COORDINATOR).DELETE().build();
        refused(bench.send(delete), 405, "method-not-here");
        refused(bench.get("/api/telling/abc", Role.COORDINATOR), 400, "malformed");
        refused(bench.get("/api/telling/13", Role.COORDINATOR), 409, "unknown-number");
        refused(bench.get("/api/dossier/abc", Role.COORDINATOR), 400, "malformed");
        refused(bench.get("/api/dossier/12?as=pdf", Role.COORDINATOR), 400, "malformed");
        refused(bench.get("/api/dossier/13", Role.COORDINATOR), 409, "unknown-number");
    }

    @Test
    void withoutAPlanThereIsNoneToHandOut() throws Exception {
        bench.planFrozen = false;
        refused(bench.get("/api/plan", Role.CREW), 409, "no-plan");
    }

    @Test
    void aRequestUnderAStrangersNameIsRefused() throws Exception {
        String answer = raw("GET /api/state HTTP/1.1\r\nHost: yard.example\r\n");
        assertThat(answer).startsWith("HTTP/1.1 421").contains("wrong-host");
        String port = ":" + bench.server.port();
        for (String host : List.of("localhost" + port, "127.0.0.1" + port, "[::1]" + port)) {
            assertThat(raw("GET /api/state HTTP/1.1\r\nHost: " + host + "\r\n"))
                    .as(host)
                    .startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void aRequestFromAnotherSitesPageIsRefused() throws Exception {
        HttpRequest.Builder request = bench.request("/api/state", null);
        refused(
                bench.send(request.header("Origin", "http://elsewhere.example").build()),
                403,
                "wrong-origin");
        HttpRequest own =
                bench.request("/api/state", null).header("Origin", bench.address("")).build();
        assertThat(bench.send(own).statusCode()).isEqualTo(200);
    }

    @Test
    void aRequestThatIsNotHttpGetsTheSameForm() throws Exception {
        String answer = raw("GET /%zz HTTP/1.1\r\nHost: 127.0.0.1\r\n");
        assertThat(answer).startsWith("HTTP/1.1 400").contains("\"refused\":\"malformed\"");
        String long8k =
                raw("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX: " + "x".repeat(9_000) + "\r\n");
        assertThat(long8k).startsWith("HTTP/1.1 431");
    }

    /**
     * RFC 9112, section 9.6: who answers and closes while a request still comes in may take its own
     * answer away from the client.
     */
    @Test
    void aRefusedRequestWhoseBodyComesLateKeepsItsAnswerAndItsConnection() throws Exception {
        try (Socket socket = new Socket("127.0.0.1", bench.server.port())) {
            send(socket, head("/api/rulings", "Content-Length: 7"));
            await().until(() -> bench.refused.contains("unknown-device"));
            socket.setSoTimeout(300);
            assertThatThrownBy(() -> socket.getInputStream().read())
                    .as("an answer before the body is in")
                    .isInstanceOf(SocketTimeoutException.class);
            socket.setSoTimeout(10_000);
            send(socket, "{\"k\":1}");
            send(socket, "GET /api/state HTTP/1.1\r\nHost: 127.0.0.1\r\n");
            send(socket, "Connection: close\r\n\r\n");
            String answers = rest(socket);
            assertThat(answers).startsWith("HTTP/1.1 401").contains("unknown-device");
            assertThat(answers).as("the second one on the same connection").contains("200 OK");
        }
    }

    @Test
    void aBodyThatNeverComesEndsByTheTimeLimitAndSoDoesOneThatIsNone() throws Exception {
        try (WebBench impatient = new WebBench(200)) {
            for (String rest : List.of("Content-Length: 7", "Transfer-Encoding: chunked")) {
                try (Socket socket = new Socket("127.0.0.1", impatient.server.port())) {
                    socket.setSoTimeout(10_000);
                    send(socket, head("/api/rulings", rest));
                    assertThat(rest(socket)).as(rest).startsWith("HTTP/1.1 401");
                }
            }
            assertThat(impatient.refused).containsOnly("unknown-device").hasSize(2);
        }
        try (Socket socket = new Socket("127.0.0.1", bench.server.port())) {
            socket.setSoTimeout(10_000);
            send(socket, head("/api/rulings", "Transfer-Encoding: chunked") + "no length\r\n");
            assertThat(rest(socket)).startsWith("HTTP/1.1 401").doesNotContain("Exception");
        }
        assertThat(bench.get("/api/state", null).statusCode()).isEqualTo(200);
    }

    /** RFC 9110, section 10.1.1: the answer is final, and the body is not sent at all. */
    @Test
    void aClientThatAsksFirstIsAnsweredBeforeItSendsABody() throws Exception {
        try (Socket socket = new Socket("127.0.0.1", bench.server.port())) {
            socket.setSoTimeout(10_000);
            send(socket, head("/api/rulings", "Content-Length: 7\r\nExpect: 100-continue"));
            assertThat(rest(socket)).startsWith("HTTP/1.1 401").contains("unknown-device");
        }
    }

    private static String head(String path, String more) {
        return "POST "
                + path
                + " HTTP/1.1\r\nHost: 127.0.0.1\r\n"
                + "Content-Type: application/json\r\n"
                + more
                + "\r\n\r\n";
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
    }

    /** All that comes until the server ends the connection. */
    private static String rest(Socket socket) throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private String raw(String head) throws Exception {
        try (Socket socket = new Socket("127.0.0.1", bench.server.port())) {
            socket.setSoTimeout(10_000);
            send(socket, head + "Connection: close\r\n\r\n");
            return rest(socket);
        }
    }

    @Test
    void aFaultOfOursIsToldNeutrally() throws Exception {
        ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(Level.OFF);
        // Someone whose role is missing, which the state never has.
        bench.holders.put("broken-token", new Holder("t-broken", "Nobody", null));
        HttpRequest request =
                bench.request("/api/rulings", null)
                        .header("Authorization", "Bearer broken-token")
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(ruling(TAP)))
                        .build();
        refused(bench.send(request), 500, "trouble-inside");
        ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(null);
    }

    @Test
    void aDossierThatCannotBeMadeIsNoUnknownNumber() throws Exception {
        bench.dossiers = form -> Optional.empty();
        refused(bench.get("/api/dossier/12", Role.COORDINATOR), 503, "busy");
        ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(Level.OFF);
        bench.dossiers =
                form -> {
                    throw new UncheckedIOException(new IOException("its process ended with 3"));
                };
        refused(bench.get("/api/dossier/12", Role.COORDINATOR), 500, "trouble-inside");
        ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(null);
    }

    /** A connection on which nothing goes to and fro is ended after a while, but not this one. */
    @Test
    void aDossierMayTakeLongerThanAConnectionMayBeIdle() throws Exception {
        int idleMillis = 100;
        try (WebBench impatient = new WebBench(idleMillis)) {
            var waited = new CompletableFuture<Void>();
            impatient.dossiers =
                    form -> {
                        waited.completeOnTimeout(null, 5L * idleMillis, TimeUnit.MILLISECONDS)
                                .join();
                        return WebBench.named(form);
                    };
            HttpResponse<String> answer = impatient.get("/api/dossier/12?as=es", Role.COORDINATOR);
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body()).isEqualTo("ES");
            assertThat(answer.headers().firstValue("Content-Type"))
                    .contains("text/html;charset=utf-8");
        }
    }
}
