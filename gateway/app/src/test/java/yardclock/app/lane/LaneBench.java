package yardclock.app.lane;

import yardclock.app.clock.Anchor;
import yardclock.app.clock.Machine;
import yardclock.app.clock.SystemGatewayClock;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;

/** A lane on a journal in memory, with rules a test can write, and a list of all that happened. */
final class LaneBench implements AutoCloseable {
    static final Outcome NOTHING = new Outcome(List.of(), List.of(), null, OptionalLong.empty());

    final JournalInMemory journal = new JournalInMemory();
    final Troubles troubles = new Troubles();
    final FeedRing feed = new FeedRing();
    final SystemGatewayClock clock;
    final List<String> happened = new CopyOnWriteArrayList<>();
    final List<Engine.View> drawn = Collections.synchronizedList(new ArrayList<>());
    final List<Throwable> deaths = new CopyOnWriteArrayList<>();
    final LiveState state;
    final Lane lane;
    volatile Function<Entry, Outcome> rules = entry -> NOTHING;
    volatile FrameSink frames = (engine, view) -> drawn.add(view);

    LaneBench() {
        this(1, Limits.INBOX_INPUTS);
    }

    LaneBench(int speed, int inboxInputs) {
        Machine machine = Machine.here();
        clock = new SystemGatewayClock(machine, Anchor.first(machine, speed));
        state = new LiveState(feed, troubles, this::apply);
        lane = new Lane(new LaneParts(clock, journal, state, troubles), inboxInputs);
    }

    private Outcome apply(Engine engine, Entry entry) {
        happened.add("applied " + entry.number());
        return rules.apply(entry);
    }

    LaneBench start(Input... opening) {
        lane.start(
                new LaneSinks(
                        effects -> happened.add("effects " + effects.size()),
                        (engine, view) -> frames.accept(engine, view),
                        LaneMeter.none()),
                new Opening(0, List.of(opening)),
                deaths::add);
        return this;
    }

    /** Offers edges and notes the receipt under a name. */
    boolean offer(String name, long... seqs) {
        List<Input> inputs = new ArrayList<>();
        for (long seq : seqs) {
            inputs.add(edge(seq));
        }
        return lane.offer(
                inputs,
                receipt ->
                        happened.add(
                                name
                                        + (receipt.isKept()
                                                ? " kept " + receipt.outcomes().size()
                                                : " lost: " + receipt.lost())));
    }

    static Input.Edge edge(long seq) {
        return new Input.Edge("fu-01", "boot", seq, 1, 1, seq);
    }

    static Outcome effect() {
        return new Outcome(
                List.of(), List.of(new Effect.Blink("fu-01", 3)), null, OptionalLong.empty());
    }

    static Outcome facts(Fact... facts) {
        return new Outcome(List.of(facts), List.of(), null, OptionalLong.empty());
    }

    static Outcome deadline(long micros) {
        return new Outcome(List.of(), List.of(), null, OptionalLong.of(micros));
    }

    @Override
    public void close() throws Exception {
        lane.close();
    }
}
