package yardclock.sim.endtoend;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The timing technician with a tablet: looks at the bench, rules. */
final class TechniciansTablet {
    private final HttpClient client = HttpClient.newHttpClient();
    private final String base;
    private final String token;

    /** Enrols with the day's first code for a technician. */
    TechniciansTablet(String http, Path day) throws IOException, InterruptedException {
        base = "http://" + http;
        Map<String, List<String>> codes =
                Json.mapper()
                        .readValue(
                                day.resolve("first-codes.json").toFile(), new TypeReference<>() {});
        ObjectNode body = Json.mapper().createObjectNode();
        body.put("code", codes.get("technician").get(0)).put("person", "Rowan Example");
        HttpRequest.Builder enrol = HttpRequest.newBuilder(URI.create(base + "/api/enrol"));
        token = post(enrol, body).path("token").asText();
    }

    /** The bench as it is now. */
    JsonNode bench() throws IOException, InterruptedException {
        HttpRequest live = request("/api/live/bench").build();
        try (InputStream stream = client.send(live, BodyHandlers.ofInputStream()).body();
                BufferedReader lines =
                        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            String line = lines.readLine();
            while (!line.equals("event: frame")) {
                line = lines.readLine();
            }
            while (!line.startsWith("data: ")) {
                line = lines.readLine();
            }
            return Json.mapper().readTree(line.substring("data: ".length()));
        }
    }

    /**
     * The answer to a ruling: an entry when it was accepted, else the reason it was refused for.
     */
    JsonNode rule(Act act) throws IOException, InterruptedException {
        ObjectNode body = Json.mapper().createObjectNode();
        body.put("key", UUID.randomUUID().toString()).put("deviceMicros", 0).put("basis", -1);
        // By the type of the field: what tells one act from another is said by the interface.
        body.set(
                "act",
                Json.mapper().readTree(Json.mapper().writerFor(Act.class).writeValueAsString(act)));
        return post(request("/api/rulings"), body);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(base + path))
                .header("Authorization", "Bearer " + token);
    }

    private JsonNode post(HttpRequest.Builder request, ObjectNode body)
            throws IOException, InterruptedException {
        HttpRequest whole =
                request.header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build();
        return Json.mapper().readTree(client.send(whole, BodyHandlers.ofString()).body());
    }
}
