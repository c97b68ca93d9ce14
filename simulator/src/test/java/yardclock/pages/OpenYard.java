package yardclock.pages;

import com.fasterxml.jackson.core.type.TypeReference;

import yardclock.app.boot.Gateway;
import yardclock.app.boot.HostPort;
import yardclock.app.boot.RefusedException;
import yardclock.app.boot.ServeSettings;
import yardclock.app.boot.TlsFiles;
import yardclock.app.json.Json;
import yardclock.app.pins.BoardWiring;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.sim.demo.FieldUnits;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.people.Mishap;
import yardclock.sim.people.TruthBook;
import yardclock.sim.stage.LiveStage;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.yard.Yard;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The real gateway with its own broker, the demo's field units, and one candidate who does what a
 * seed says. Coordinator, proctor and public are left to the test and its browser. The plan is the
 * demo's, but its board shows times.
 */
final class OpenYard implements AutoCloseable {
    static final int NUMBER = 1;
    static final int SPEED = 6;
    private static final String ROSTER = "number,name,group\n1,Nobody One,1\n2,Nobody Two,1\n";

    private final LiveStage stage = new LiveStage(SPEED);
    private final ExamPlan plan = DemoPlan.plan().plan();
    private final TruthBook book = new TruthBook();
    private final Map<String, Integer> given = new TreeMap<>();
    private final Path data;
    private final Gateway gateway;
    private final Yard yard;
    private final Candidate candidate;
    private final String scheme;

    OpenYard(Path folder) throws IOException, RefusedException {
        this(folder, null);
    }

    /** A yard whose pages are served encrypted; null for plain HTTP. */
    OpenYard(Path folder, TlsFiles tls) throws IOException, RefusedException {
        scheme = tls == null ? "http" : "https";
        data = folder.resolve("day");
        HostPort mqtt = new HostPort("127.0.0.1", freePort());
        gateway =
                Gateway.start(
                        new ServeSettings(
                                data,
                                new HostPort("127.0.0.1", 0),
                                mqtt,
                                ServeSettings.EMBEDDED,
                                tls,
                                false,
                                write(folder.resolve("plan.yaml"), planWithTimes()),
                                write(folder.resolve("roster.csv"), ROSTER),
                                SPEED,
                                BoardWiring.NONE),
                        cause -> {});
        Map<String, VirtualUnit> units =
                FieldUnits.build(stage, plan, "tcp://" + mqtt, unitPasswords(), 1);
        yard = new Yard(stage, plan, units);
        candidate = new Candidate(stage, yard, plan.stations(), uneventfulRun(), book);
        for (Contact horn : plan.stations().get(0).start().contacts()) {
            units.get(horn.sensor().unit()).onShown((what, at) -> candidate.hears(at));
        }
        yard.units().forEach(unit -> stage.soon(unit::powerOn));
        stage.begin();
    }

    String address(String path) {
        return scheme + "://127.0.0.1:" + gateway.httpPort() + path;
    }

    /** A one-time code of this role that was not given out before. */
    String code(String role) throws IOException {
        Map<String, List<String>> codes =
                Json.mapper()
                        .readValue(
                                data.resolve("first-codes.json").toFile(),
                                new TypeReference<>() {});
        return codes.get(role).get(given.merge(role, 1, Integer::sum) - 1);
    }

    /** Where the journal lies; to be read once the yard is closed. */
    Path journal() {
        return data;
    }

    /** The candidate comes to the start, and this proctor walks along. */
    void send(WalkingProctor proctor) {
        stage.soon(
                () -> {
                    candidate.accompaniedBy(proctor);
                    candidate.come();
                });
    }

    /** The official time as it truly was: last finish − first start, nothing was waited for. */
    long trueMicros() {
        String first = plan.stations().get(0).id();
        long start = book.at(NUMBER, first).startMicros();
        return book.at(NUMBER, plan.last().id()).finishMicros() - start;
    }

    /** The first seed with which nothing happens that would need a ruling. */
    private CandidateRun uneventfulRun() {
        long seed = 1;
        CandidateRun run = CandidateRun.draw(seed, NUMBER, plan.stations());
        while (run.mishap().kind() != Mishap.NONE.kind()) {
            run = CandidateRun.draw(++seed, NUMBER, plan.stations());
        }
        return run;
    }

    private static String planWithTimes() {
        String plan = StaticFiles.text("yardclock/demo/plan.yaml");
        String open = plan.replace("timesOnBoard: no", "timesOnBoard: yes");
        if (open.equals(plan)) {
            throw new IllegalStateException("the demo plan has another word for timesOnBoard");
        }
        return open;
    }

    private Map<String, String> unitPasswords() throws IOException {
        return Json.mapper()
                .readValue(data.resolve("unit-passwords.json").toFile(), new TypeReference<>() {});
    }

    private static Path write(Path file, String text) throws IOException {
        return Files.writeString(file, text);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    @Override
    public void close() {
        yard.units().forEach(VirtualUnit::powerOff);
        gateway.close();
        stage.close();
    }
}
