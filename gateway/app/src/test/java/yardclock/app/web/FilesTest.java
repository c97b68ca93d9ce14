package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;

class FilesTest {
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
    void everyPageIsTheOneShell() throws Exception {
        String front = bench.get("/", null).body();
        assertThat(front).startsWith("<!doctype html>");
        for (String page :
                List.of("/enrol", "/control", "/post", "/crew", "/watch", "/board", "/bench")) {
            HttpResponse<String> answer = bench.get(page, null);
            assertThat(answer.body()).as(page).isEqualTo(front);
            assertThat(answer.headers().firstValue("Cache-Control")).contains("no-cache");
        }
    }

    @Test
    void onlyTheImportMapRunsAsScriptInThePage() throws Exception {
        String policy = header(bench.get("/", null), "Content-Security-Policy");
        assertThat(policy)
                .contains("script-src 'self' 'sha256-")
                .contains("frame-ancestors 'none'")
                .contains("default-src 'none'");
        assertThat(policy.replaceAll("style-src[^;]*;", "")).doesNotContain("unsafe");
        HttpResponse<String> state = bench.get("/api/state", null);
        assertThat(header(state, "Content-Security-Policy")).contains("script-src 'self';");
        assertThat(header(state, "X-Content-Type-Options")).isEqualTo("nosniff");
    }

    @Test
    void aFileThatIsCurrentIsNotSentAgain() throws Exception {
        HttpResponse<String> first = bench.get("/ui/main.js", null);
        assertThat(first.statusCode()).isEqualTo(200);
        assertThat(header(first, "Content-Type")).startsWith("text/javascript");
        HttpRequest again =
                bench.request("/ui/main.js", null)
                        .header("If-None-Match", header(first, "ETag"))
                        .build();
        HttpResponse<String> second = bench.send(again);
        assertThat(second.statusCode()).isEqualTo(304);
        assertThat(second.body()).isEmpty();
    }

    @Test
    void theLibrariesOfThePagesAreServedAndNoOthers() throws Exception {
        HttpResponse<String> lit = bench.get("/webjars/lit/3.3.2/index.js", null);
        assertThat(lit.statusCode()).isEqualTo(200);
        assertThat(header(lit, "Cache-Control")).contains("immutable");
        for (String other : List.of("swagger-ui/1/a.js", "lit", "/lit/3.3.2/index.js")) {
            assertThat(bench.get("/webjars/" + other, null).statusCode()).isEqualTo(404);
        }
    }

    @Test
    void nothingOutsideTheFoldersCanBeReached() throws Exception {
        List<String> tries =
                List.of(
                        "/ui/../yardclock/openapi.yaml",
                        "/ui/..%2fyardclock%2fopenapi.yaml",
                        "/ui/%2e%2e/yardclock/openapi.yaml",
                        "/ui/..%5cyardclock%5copenapi.yaml",
                        "/ui/.%2e/logback.xml",
                        "/ui//etc/passwd",
                        "/ui/%2fetc%2fpasswd.js",
                        "/ui/main.js%00.html",
                        "/ui/lib",
                        "/ui/lib/",
                        "/ui/.hidden.js",
                        "/webjars/lit/../../../../logback.xml",
                        "/webjars/lit/%2e%2e/%2e%2e/x.json");
        for (String path : tries) {
            int status = rawStatus(path);
            assertThat(status).as(path).isIn(400, 404);
        }
    }

    /** Over a bare socket, because the client library would tidy the path up first. */
    private static int rawStatus(String path) throws Exception {
        try (var socket = new java.net.Socket("127.0.0.1", bench.server.port())) {
            String request =
                    "GET "
                            + path
                            + " HTTP/1.1\r\nHost: 127.0.0.1\r\n"
                            + "Connection: close\r\n\r\n";
            socket.getOutputStream()
                    .write(request.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            socket.setSoTimeout(10_000);
            String answer =
                    new String(
                            socket.getInputStream().readAllBytes(),
                            java.nio.charset.StandardCharsets.UTF_8);
            return Integer.parseInt(answer.substring(9, 12));
        }
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }
}
