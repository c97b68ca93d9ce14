package yardclock.sim.twin;

import yardclock.app.lane.FeedRing;
import yardclock.app.lane.FrameSink;
import yardclock.app.lane.LaneMeter;
import yardclock.app.lane.LaneParts;
import yardclock.app.lane.LaneSinks;
import yardclock.app.lane.LiveState;
import yardclock.app.lane.Opening;
import yardclock.app.lane.SteppedLane;
import yardclock.app.lane.Troubles;
import yardclock.app.stations.SteppedLink;
import yardclock.core.course.ExamPlan;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Effect;
import yardclock.sim.stage.Stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The gateway in virtual time: its own lane, engine, decoding and exchange schedule on a stage. The
 * lane takes each offer at once, and otherwise wakes when it says it is due.
 */
final class TwinGateway {
    /** The schedule of exchanges is looked at at least this often. */
    private static final long ASK_NANOS = 1_000_000_000L;

    private final Stage stage;
    private final MemoryJournal journal = new MemoryJournal();
    private final SteppedLane lane;
    private final SteppedLink link;
    private Stage.Planned nextTurn = () -> {};
    private boolean turning;

    TwinGateway(Stage stage, ExamPlan plan, Air air, Sinks sinks, long seed) {
        this.stage = stage;
        TwinClock clock = new TwinClock(stage);
        Troubles troubles = new Troubles();
        LiveState state = new LiveState(new FeedRing(), troubles);
        List<Input> opening = new ArrayList<>();
        opening.add(
                new Input.Epoch(
                        "twin",
                        "twin",
                        clock.wall().epochMicros(),
                        stage.nowMicros(),
                        1,
                        false,
                        Engine.RULES_VERSION));
        opening.addAll(sinks.morning());
        this.lane =
                new SteppedLane(
                        new LaneParts(clock, journal, state, troubles),
                        new LaneSinks(this::release, sinks.frames(), meter(sinks)),
                        new Opening(stage.nowMicros(), opening));
        this.link = new SteppedLink(plan, lane, clock, new Random(seed), air);
        air.connect(
                (topic, payload, qos, done) ->
                        arrived(() -> link.arrived(topic, payload, qos, done)));
    }

    /**
     * What the day gives and gets.
     *
     * @param morning what stands in the journal before anything happens
     * @param applied told of each entry and what followed from it
     */
    record Sinks(List<Input> morning, FrameSink frames, Applied applied) {}

    /** Told of each entry. */
    interface Applied {
        void applied(Entry entry, Outcome outcome);
    }

    private static LaneMeter meter(Sinks sinks) {
        return new LaneMeter() {
            @Override
            public void applied(Entry entry, Outcome outcome) {
                sinks.applied().applied(entry, outcome);
            }
        };
    }

    void begin() {
        turn();
        askForTime();
    }

    private void release(List<Effect> effects) {
        link.release(effects);
    }

    /** Something arrived: the lane takes it at once. */
    private void arrived(Runnable arrival) {
        arrival.run();
        turn();
    }

    void offer(Input input, Consumer<Outcome> then) {
        lane.offer(input, receipt -> receipt.outcomes().forEach(then));
        turn();
    }

    <T> T ask(Function<Engine, T> question) {
        var answer = lane.ask(question);
        turn();
        return answer.join();
    }

    private void turn() {
        if (turning) {
            return;
        }
        turning = true;
        nextTurn.drop();
        long nanos = lane.turn();
        turning = false;
        nextTurn = stage.afterMicros(Math.max(1, nanos / 1_000), this::turn);
    }

    private void askForTime() {
        long nanos = link.ask(ASK_NANOS);
        stage.afterMicros(Math.max(1, nanos / 1_000), this::askForTime);
    }

    List<Entry> journal() {
        return journal.entries();
    }
}
