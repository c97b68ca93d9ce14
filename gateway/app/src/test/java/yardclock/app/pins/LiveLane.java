package yardclock.app.pins;

import yardclock.app.clock.Anchor;
import yardclock.app.clock.Machine;
import yardclock.app.clock.SystemGatewayClock;
import yardclock.app.journal.JournalFile;
import yardclock.app.journal.JournalReader;
import yardclock.app.lane.FeedRing;
import yardclock.app.lane.FrameSink;
import yardclock.app.lane.Lane;
import yardclock.app.lane.LaneMeter;
import yardclock.app.lane.LaneParts;
import yardclock.app.lane.LaneSinks;
import yardclock.app.lane.LiveState;
import yardclock.app.lane.Opening;
import yardclock.app.lane.Troubles;
import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.Roster;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * A lane as on a real day, on a journal in a file, with the demo's plan and a stop button of its
 * unit fu-12 besides.
 */
final class LiveLane implements AutoCloseable {
    final Troubles troubles = new Troubles();
    static final String UNIT = "fu-12";
    static final int STOP_BUTTON = 8;

    final SystemGatewayClock clock;
    final ExamPlan plan = withStopButton(DemoPlan.plan().plan());
    final Lane lane;
    final LiveState state = new LiveState(new FeedRing(), troubles);
    final List<Throwable> deaths = new CopyOnWriteArrayList<>();
    private final Path directory;
    private final JournalFile journal;

    /**
     * @param speed exam time per real time
     */
    LiveLane(Path directory, int speed, FrameSink frames) throws Exception {
        this.directory = directory;
        Machine machine = Machine.here();
        Anchor anchor = Anchor.first(machine, speed);
        clock = new SystemGatewayClock(machine, anchor);
        journal = JournalFile.open(directory, entry -> {});
        lane = new Lane(new LaneParts(clock, journal, state, troubles));
        Roster roster = DemoPlan.roster();
        Input.Epoch epoch =
                new Input.Epoch(
                        "boot",
                        "process",
                        anchor.wallMicros(),
                        0,
                        speed,
                        false,
                        Engine.RULES_VERSION);
        List<Input> opening =
                List.of(
                        epoch,
                        new Input.PlanFrozen(plan, DemoPlan.plan().sha256()),
                        new Input.RosterFrozen(roster.lines(), roster.sha256()));
        lane.start(
                new LaneSinks(effects -> {}, frames, LaneMeter.none()),
                new Opening(anchor.gatewayMicros(), opening),
                deaths::add);
    }

    private static ExamPlan withStopButton(ExamPlan demo) {
        Text name = new Text("Stop at the tower", "Parada en la torre");
        SensorPlan button =
                new SensorPlan(STOP_BUTTON, SensorKind.STOP_BUTTON, name, 0, false, true, 2_000);
        List<FieldUnit> units = new ArrayList<>();
        for (FieldUnit unit : demo.fieldUnits()) {
            List<SensorPlan> sensors = new ArrayList<>(unit.sensors());
            if (unit.id().equals(UNIT)) {
                sensors.add(button);
            }
            units.add(new FieldUnit(unit.id(), unit.place(), sensors));
        }
        return demo.wiredWith(units);
    }

    /** From now on nothing can be written any more. */
    void loseJournal() {
        journal.close();
    }

    <T> T ask(Function<Engine, T> question) throws Exception {
        return lane.ask(question).get(10, TimeUnit.SECONDS);
    }

    /** What the file holds, of one kind, in its order. */
    <T extends Input> List<T> journalled(Class<T> kind) throws Exception {
        List<T> found = new ArrayList<>();
        try (JournalReader reader = JournalReader.open(directory.resolve(JournalFile.NAME))) {
            reader.entries(
                    entry -> {
                        if (kind.isInstance(entry.input())) {
                            found.add(kind.cast(entry.input()));
                        }
                    });
        }
        return found;
    }

    @Override
    public void close() throws Exception {
        lane.close();
        journal.close();
    }
}
