package yardclock.sim.twin;

import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Verdict;
import yardclock.sim.stage.Stage;
import yardclock.sim.tablets.Gateway;
import yardclock.sim.tablets.PageClock;
import yardclock.sim.tablets.Tablet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * A tablet whose link is the stage: frames and rulings take their time on the way, in order, and
 * its page's clock is compared as the gateway's own pages are.
 *
 * @param <F> the kind of frame it shows
 */
final class TwinTablet<F> implements Tablet<F> {
    private static final int BURST = 6;
    private static final long BURST_GAP_MICROS = 500_000;
    private static final long PERIOD_MICROS = 5_000_000;
    private static final long THINKING_MICROS = 300;

    private final Stage stage;
    private final TwinGateway gateway;
    private final Access access;
    private final PageClock clock;
    private final Air.Path path;
    private final BiFunction<Engine, Engine.View, F> projection;
    private final Deque<Waiting> queue = new ArrayDeque<>();
    private Consumer<F> onFrame = frame -> {};
    private F newest;
    private boolean sending;
    private long asked;
    private long keys;
    private long lastDownMicros;

    private record Waiting(
            String key,
            PageClock.Reading pressed,
            long basis,
            Act act,
            Consumer<Gateway.Answer> then) {}

    /** What a tablet is made of. */
    record Parts(Stage stage, TwinGateway gateway, Access access, PageClock clock, Air.Path path) {}

    TwinTablet(Parts parts, BiFunction<Engine, Engine.View, F> projection) {
        this.stage = parts.stage();
        this.gateway = parts.gateway();
        this.access = parts.access();
        this.clock = parts.clock();
        this.path = parts.path();
        this.projection = projection;
    }

    @Override
    public void open(Consumer<F> listener) {
        onFrame = listener;
        stage.soon(this::askForClock);
    }

    private void askForClock() {
        asked++;
        String id = access.device() + '-' + asked;
        long sent = stage.nowMicros();
        stage.afterMicros(path.downMicros(), () -> answer(id, sent, clock.read()));
        long next = asked < BURST ? BURST_GAP_MICROS : PERIOD_MICROS * (80 + asked % 41) / 100;
        stage.afterMicros(next, this::askForClock);
    }

    private void answer(String id, long gatewaySent, PageClock.Reading received) {
        long sentTick = received.tick() + THINKING_MICROS;
        stage.afterMicros(
                THINKING_MICROS + path.upMicros(),
                () ->
                        gateway.offer(
                                new Input.TabletExchange(
                                        access.device(),
                                        received.boot(),
                                        id,
                                        gatewaySent,
                                        received.tick(),
                                        sentTick,
                                        stage.nowMicros()),
                                outcome -> {}));
    }

    /** The gateway has drawn: the frame goes on its way. */
    void draw(Engine engine, Engine.View view) {
        F frame = projection.apply(engine, view);
        lastDownMicros = Math.max(lastDownMicros + 1, stage.nowMicros() + path.downMicros());
        stage.at(lastDownMicros, () -> show(frame));
    }

    private void show(F frame) {
        newest = frame;
        onFrame.accept(frame);
    }

    @Override
    public void close() {
        onFrame = frame -> {};
    }

    @Override
    public Access access() {
        return access;
    }

    @Override
    public F newest() {
        return newest;
    }

    @Override
    public boolean isFresh() {
        return newest != null;
    }

    @Override
    public void press(Act act, long basis, Consumer<Gateway.Answer> then) {
        keys++;
        queue.addLast(new Waiting(access.device() + "-k" + keys, clock.read(), basis, act, then));
        sendNext();
    }

    private void sendNext() {
        if (!sending && !queue.isEmpty()) {
            sending = true;
            stage.afterMicros(path.upMicros(), () -> arrive(queue.peekFirst()));
        }
    }

    private void arrive(Waiting first) {
        gateway.offer(
                new Input.Ruling(
                        first.key(),
                        access.device(),
                        first.pressed().boot(),
                        first.pressed().tick(),
                        stage.nowMicros(),
                        first.basis(),
                        first.act()),
                outcome -> stage.afterMicros(path.downMicros(), () -> answered(first, outcome)));
    }

    private void answered(Waiting first, Outcome outcome) {
        sending = false;
        queue.removeFirst();
        first.then().accept(answer(outcome.verdict()));
        sendNext();
    }

    /** As the gateway's HTTP would say it. */
    private static Gateway.Answer answer(Verdict verdict) {
        ObjectNode body = Json.mapper().createObjectNode();
        if (verdict.isAccepted()) {
            return new Gateway.Answer(
                    200, body.put("accepted", true).put("entry", verdict.entry()));
        }
        return new Gateway.Answer(409, body.put("refused", verdict.refusal().code()));
    }
}
