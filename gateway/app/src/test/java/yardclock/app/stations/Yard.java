package yardclock.app.stations;

import yardclock.app.FreePort;
import yardclock.app.broker.EmbeddedBroker;
import yardclock.app.broker.UnitPasswords;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.PlanName;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A yard for tests: a broker on a free port, a plan with three field units, links and units. */
final class Yard implements AutoCloseable {
    static final List<String> UNITS = List.of("fu-01", "fu-02", "fu-03");
    static final Troubles TROUBLES = new Troubles();

    private final Path folder;
    private final int port;
    private final UnitPasswords passwords;
    private final List<AutoCloseable> open = new ArrayList<>();
    private EmbeddedBroker broker;

    Yard(Path folder) throws IOException {
        this.folder = folder;
        this.port = FreePort.find();
        this.passwords = UnitPasswords.in(folder, UNITS);
        startBroker();
    }

    void startBroker() throws IOException {
        broker = new EmbeddedBroker(folder.resolve("broker"), "127.0.0.1", port, passwords);
        broker.start();
    }

    void stopBroker() {
        broker.close();
    }

    String uri() {
        return "tcp://127.0.0.1:" + port;
    }

    String password(String user) {
        return passwords.of(user);
    }

    BenchUnit unit(String id) throws Exception {
        BenchUnit unit = new BenchUnit(uri(), id, password(id));
        open.add(unit);
        return unit;
    }

    StationLink link(Inbox inbox) {
        return link(uri(), inbox, 1);
    }

    StationLink link(String uri, Inbox inbox, int speed) {
        LinkSettings settings =
                new LinkSettings(
                        uri, UnitPasswords.GATEWAY, password("gateway"), Duration.ofMillis(300));
        StationLink link = new StationLink(settings, plan(), inbox, new RealTime(speed), TROUBLES);
        open.add(link);
        link.start();
        return link;
    }

    static ExamPlan plan() {
        Text text = new Text("bench", "banco");
        SensorPlan mat = new SensorPlan(1, SensorKind.MAT, text, 0, false, true, 500);
        SensorPlan horn = new SensorPlan(9, SensorKind.HORN, text, 0, false, false, 500);
        List<FieldUnit> units =
                UNITS.stream().map(id -> new FieldUnit(id, text, List.of(mat, horn))).toList();
        DayRules rules = null;
        return new ExamPlan(new PlanName("bench", 3, text, "", ""), null, rules, List.of(), units);
    }

    @Override
    public void close() throws Exception {
        for (int i = open.size() - 1; i >= 0; i--) {
            open.get(i).close();
        }
        stopBroker();
    }
}
