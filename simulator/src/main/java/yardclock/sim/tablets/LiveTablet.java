package yardclock.sim.tablets;

import com.fasterxml.jackson.core.JsonProcessingException;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;
import yardclock.sim.stage.Stage;

import java.util.ArrayDeque;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * One tablet with its token: shows the newest frame of one kind, sends rulings in order, each with
 * its page's clock at the press, and answers the gateway's questions to that clock. Used on the
 * stage; questions are answered and frames parsed on the link's threads, and a frame that a newer
 * one has overtaken is never looked at.
 *
 * @param <F> the kind of frame it shows
 */
public final class LiveTablet<F> implements Tablet<F> {
    private static final Logger LOG = LoggerFactory.getLogger(LiveTablet.class);
    private static final long RETRY_REAL_MILLIS = 300;

    private final Stage stage;
    private final Gateway gateway;
    private final Access access;
    private final Class<F> kind;
    private final PageClock clock;
    private final Stream frames;
    private final AtomicReference<F> unseen = new AtomicReference<>();
    private final ArrayDeque<Waiting> queue = new ArrayDeque<>();
    private Consumer<F> onFrame = frame -> {};
    private F newest;
    private boolean sending;

    private record Waiting(RulingToSend ruling, Consumer<Gateway.Answer> then) {}

    /**
     * @param page what it shows, and the kind of frame that comes from there
     */
    public LiveTablet(Stage stage, Gateway gateway, Access access, PageClock clock, Page<F> page) {
        this.stage = stage;
        this.gateway = gateway;
        this.access = access;
        this.clock = clock;
        this.kind = page.kind();
        this.frames = new Stream(stage, gateway, page.path(), access.token(), this::arrived);
    }

    /** The address of a stream of frames, and their kind. */
    public record Page<F>(String path, Class<F> kind) {}

    @Override
    public void open(Consumer<F> listener) {
        onFrame = listener;
        frames.open();
    }

    /** Lets its page be loaded anew now and then. */
    public void reloadNowAndThen() {
        clock.restartNowAndThen(() -> gateway.wantClock(access.token()));
    }

    @Override
    public void close() {
        frames.close();
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
        return newest != null && frames.isFresh();
    }

    private void arrived(Stream.Message message) {
        PageClock.Reading received = clock.read();
        try {
            if (message.kind().equals("clock")) {
                answer(Json.mapper().readTree(message.data()).path("id").asText(), received);
            }
            if (!message.kind().equals("frame")) {
                return;
            }
            F frame = Json.mapper().readValue(message.data(), kind);
            if (unseen.getAndSet(frame) == null) {
                stage.soon(this::look);
            }
        } catch (JsonProcessingException e) {
            LOG.error("a {} for {} that cannot be read", message.kind(), kind.getSimpleName(), e);
        }
    }

    private void answer(String id, PageClock.Reading received) {
        PageClock.Reading sent = clock.read();
        if (sent.boot().equals(received.boot())) {
            gateway.answerClock(access.token(), id, received, sent.tick());
        }
    }

    private void look() {
        newest = unseen.getAndSet(null);
        onFrame.accept(newest);
    }

    @Override
    public void press(Act act, long basis, Consumer<Gateway.Answer> then) {
        queue.addLast(new Waiting(RulingToSend.of(clock.read(), basis, act), then));
        sendNext();
    }

    private void sendNext() {
        if (sending || queue.isEmpty()) {
            return;
        }
        sending = true;
        Waiting first = queue.peekFirst();
        gateway.rule(
                access.token(),
                first.ruling(),
                answer -> stage.soon(() -> answered(first, answer)));
    }

    private void answered(Waiting first, Gateway.Answer answer) {
        sending = false;
        if (answer.isTrouble()) {
            stage.afterRealMillis(RETRY_REAL_MILLIS, this::sendNext);
            return;
        }
        queue.removeFirst();
        if (!answer.isOk()) {
            LOG.debug("{} refused: {}", first.ruling().act(), answer);
        }
        first.then().accept(answer);
        sendNext();
    }
}
