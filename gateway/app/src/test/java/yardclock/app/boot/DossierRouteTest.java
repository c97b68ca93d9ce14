package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;

import picocli.CommandLine;

import yardclock.app.web.WebServer;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/** A dossier from a gateway that runs, checked as anybody would check it later. */
class DossierRouteTest {
    @TempDir Path directory;

    private final List<Throwable> deaths = new CopyOnWriteArrayList<>();

    @Test
    void what_the_running_gateway_hands_out_holds_when_it_is_checked() throws Exception {
        DayFolder day = DayFolder.in(directory);
        Path file = directory.resolve("dossier.json");
        try (Gateway gateway = Gateway.start(day.settings(), deaths::add)) {
            Tablet coordinator = new Tablet(gateway.httpPort());
            coordinator.enrol(directory, "coordinator");
            Tablet proctor = new Tablet(gateway.httpPort());
            proctor.enrol(directory, "proctor");
            Tablet safety = Tablet.signTheChecklist(gateway.httpPort(), directory);
            safety.rule("team-away", "team", "medical");
            assertThat(
                            coordinator
                                    .press(
                                            "early",
                                            "release",
                                            "number",
                                            1,
                                            "proctorDevice",
                                            proctor.device())
                                    .body())
                    .contains("team-away");
            safety.rule("team-back", "team", "medical");
            coordinator.rule("release", "number", 1, "proctorDevice", proctor.device());
            proctor.rule("withdraw", "number", 1, "words", "sprained a wrist");

            HttpResponse<String> json = coordinator.get("/api/dossier/1");
            assertThat(json.statusCode()).as(json.body()).isEqualTo(200);
            assertThat(json.headers().firstValue("Content-Type")).contains("application/json");
            Files.writeString(file, json.body());
            assertThat(coordinator.get("/api/dossier/1?as=es").body())
                    .startsWith("<!doctype html>")
                    .contains("lang=\"es\"")
                    .contains("sprained a wrist");
            assertThat(proctor.get("/api/dossier/1").statusCode()).isEqualTo(403);
            assertThat(coordinator.get("/api/dossier/99999").body()).contains("unknown-number");
            assertThat(coordinator.get("/api/dossier/0").body()).contains("unknown-number");
            assertThat(unfinished()).as("left in the day's directory").isEmpty();
        }
        assertThat(deaths).isEmpty();
        DossierFile dossier = DossierFile.read(file);
        assertThat(new DossierCheck(dossier).problems()).isEmpty();
        assertThat(dossier.dossier().differences()).isEmpty();
        assertThat(Files.readString(file)).contains("sprained a wrist");

        StringWriter said = new StringWriter();
        CommandLine check = Main.commandLine().setOut(new PrintWriter(said, true));
        assertThat(check.execute("dossier", "--check", file.toString())).isZero();
        assertThat(said.toString()).startsWith("It holds");

        Files.writeString(file, Files.readString(file).replace("sprained", "bruised!"));
        assertThat(new DossierCheck(DossierFile.read(file)).problems())
                .as("a changed word is found")
                .isNotEmpty();
    }

    @Test
    void a_process_that_finds_no_journal_is_trouble_of_the_gateway_which_runs_on()
            throws Exception {
        ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(Level.OFF);
        DayFolder day = DayFolder.in(directory);
        try (Gateway gateway = Gateway.start(day.settings(), deaths::add)) {
            Tablet coordinator = new Tablet(gateway.httpPort());
            coordinator.enrol(directory, "coordinator");
            Path away = directory.resolve("away.db");
            Files.move(day.journal(), away);
            HttpResponse<String> answer = coordinator.get("/api/dossier/1");
            Files.move(away, day.journal());
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(500);
            assertThat(answer.body()).contains("trouble-inside");
            assertThat(unfinished()).isEmpty();
            assertThat(coordinator.get("/api/dossier/1").statusCode()).isEqualTo(200);
        } finally {
            ((Logger) LoggerFactory.getLogger(WebServer.class)).setLevel(null);
        }
        assertThat(deaths).isEmpty();
    }

    private List<Path> unfinished() throws IOException {
        try (Stream<Path> files = Files.list(directory.resolve("day"))) {
            return files.filter(file -> file.toString().endsWith(".part")).toList();
        }
    }
}
