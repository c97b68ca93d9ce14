package yardclock.sim.endtoend;

import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.app.settings.Roster;
import yardclock.sim.demo.DayFolder;
import yardclock.sim.demo.Demo;
import yardclock.sim.demo.DemoFailedException;
import yardclock.sim.demo.DemoSettings;
import yardclock.sim.demo.GatewayProcess;
import yardclock.sim.demo.SimulatedDay;
import yardclock.sim.referee.Figures;
import yardclock.sim.units.UnitCounts;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;

/** A gateway in a process of its own with a simulated day beside it; closing ends both. */
final class RunningDay implements AutoCloseable {
    final DemoSettings settings;
    final DayFolder folder;
    final GatewayProcess gateway;
    final SimulatedDay day;

    RunningDay(DemoSettings settings, DayFolder folder) throws Exception {
        this.settings = settings;
        this.folder = folder;
        Roster roster = folder.writeRoster(settings.candidates());
        gateway = new GatewayProcess(settings, folder);
        gateway.start();
        Demo.awaitUp(settings.http(), gateway);
        day = new SimulatedDay(settings, folder, roster);
        day.begin();
    }

    void awaitFinished(int seconds) {
        await("every candidate done; gateway: " + gateway.lastWords())
                .atMost(Duration.ofSeconds(seconds))
                .until(() -> day.finished().isDone());
    }

    /** Waits until the gateway has said of every edge that it is kept. */
    List<UnitCounts> awaitAllKept() throws DemoFailedException {
        await("every edge kept")
                .atMost(Duration.ofSeconds(20))
                .until(() -> day.unitCounts().stream().allMatch(unit -> unit.open() == 0));
        return day.unitCounts();
    }

    Figures figures() throws DemoFailedException {
        List<UnitCounts> counts = awaitAllKept();
        return day.figures(gateway.journalEdges(), counts, day.state().path("digest").asText());
    }

    /** What the gateway says of itself: entries and digest of one moment. */
    JsonNode state() throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create("http://" + settings.http() + "/api/state"))
                        .build();
        HttpResponse<byte[]> answer =
                HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        return Json.mapper().readTree(answer.body());
    }

    /** The same from the journal, derived again in a process of its own. */
    JsonNode replayed() throws IOException, InterruptedException {
        Process replay =
                new ProcessBuilder(
                                GatewayProcess.command(
                                        "-Xmx128m", "replay", folder.journal().toString()))
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        String line = new String(replay.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (replay.waitFor() != 0) {
            throw new IOException("replay refused");
        }
        return Json.mapper().readTree(line);
    }

    @Override
    public void close() {
        day.close();
        gateway.stop();
    }
}
