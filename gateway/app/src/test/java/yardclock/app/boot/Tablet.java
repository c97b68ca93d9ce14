package yardclock.app.boot;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.CheckItem;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.UUID;
import java.util.stream.Stream;

/** A tablet by hand: plain HTTP, one token. */
final class Tablet {
    private final HttpClient client = HttpClient.newHttpClient();
    private final String base;
    private String token = "";
    private String device = "";

    Tablet(int port) {
        base = "http://127.0.0.1:" + port;
    }

    Tablet(int port, String token) {
        this(port);
        this.token = token;
    }

    /** Trades the first of the day's first codes for this role, and keeps the token. */
    String enrol(Path directory, String role) throws Exception {
        JsonNode codes = Json.mapper().readTree(directory.resolve("day/first-codes.json").toFile());
        String body =
                Json.mapper()
                        .createObjectNode()
                        .put("code", codes.path(role).path(0).asText())
                        .put("person", "Rowan Example")
                        .toString();
        HttpResponse<String> answer =
                send(
                        HttpRequest.newBuilder(URI.create(base + "/api/enrol"))
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body)));
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("not enrolled: " + answer.body());
        }
        token = Json.mapper().readTree(answer.body()).path("token").asText();
        device = Json.mapper().readTree(answer.body()).path("device").asText();
        return token;
    }

    /** The safety officer signs all that the demonstration's plan asks for before a release. */
    static Tablet signTheChecklist(int port, Path directory) throws Exception {
        Tablet safety = new Tablet(port);
        safety.enrol(directory, "safety");
        for (CheckItem item : DemoPlan.plan().plan().startOfDay()) {
            safety.rule("checklist-done", "item", item.id());
        }
        return safety;
    }

    String device() {
        return device;
    }

    String token() {
        return token;
    }

    /** A ruling that must be accepted; fields as name and value by turns. */
    void rule(String act, Object... fields) throws Exception {
        HttpResponse<String> answer = press(UUID.randomUUID().toString(), act, fields);
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(act + " was refused: " + answer.body());
        }
    }

    /** Sends a ruling under this key, and gives whatever is answered. */
    HttpResponse<String> press(String key, String act, Object... fields)
            throws IOException, InterruptedException {
        return client.send(ruling(key, act, fields), HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a ruling under this key without waiting; nobody reads the answer. */
    void pressUnheard(String key, String act, Object... fields) {
        var unused =
                client.sendAsync(ruling(key, act, fields), HttpResponse.BodyHandlers.discarding());
    }

    private HttpRequest ruling(String key, String act, Object... fields) {
        var body = Json.mapper().createObjectNode();
        body.put("key", key).put("deviceMicros", 0).put("basis", -1);
        var json = body.putObject("act").put("act", act);
        for (int i = 0; i < fields.length; i += 2) {
            json.set((String) fields[i], Json.mapper().valueToTree(fields[i + 1]));
        }
        return withToken(
                        HttpRequest.newBuilder(URI.create(base + "/api/rulings"))
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body.toString())))
                .build();
    }

    HttpResponse<String> get(String path) throws Exception {
        return send(HttpRequest.newBuilder(URI.create(base + path)).GET());
    }

    JsonNode state() throws Exception {
        return Json.mapper().readTree(get("/api/state").body());
    }

    /** The first frame a page of this audience gets. */
    JsonNode firstFrame(String audience) throws Exception {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(base + "/api/live/" + audience))
                        .header("Accept", "text/event-stream")
                        .header("Authorization", "Bearer " + token)
                        .build();
        var answer = client.send(request, HttpResponse.BodyHandlers.ofLines());
        try (Stream<String> lines = answer.body()) {
            String data =
                    lines.dropWhile(line -> !line.equals("event: frame"))
                            .filter(line -> line.startsWith("data: "))
                            .findFirst()
                            .orElseThrow();
            return Json.mapper().readTree(data.substring("data: ".length()));
        }
    }

    private HttpResponse<String> send(HttpRequest.Builder request)
            throws IOException, InterruptedException {
        return client.send(withToken(request).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder withToken(HttpRequest.Builder request) {
        return token.isEmpty() ? request : request.header("Authorization", "Bearer " + token);
    }
}
