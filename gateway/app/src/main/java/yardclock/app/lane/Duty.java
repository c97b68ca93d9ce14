package yardclock.app.lane;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox.Receipt;
import yardclock.app.lane.Journal.Appended;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Effect;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Consumer;

/**
 * What the lane does over and over: take a batch, keep it, apply it, say what follows, answer
 * questions, draw frames. It has no thread of its own; whoever calls {@link #turn} lends one.
 */
final class Duty {
    static final String TROUBLE = "journal";

    private static final Logger LOG = LoggerFactory.getLogger(Lane.class);
    private static final long RETRY_NANOS = Waiting.millis(Limits.JOURNAL_RETRY_MILLIS);

    private final GatewayClock clock;
    private final Journal journal;
    private final LiveState state;
    private final Troubles troubles;
    private final Waiting waiting;
    private final LaneSinks sinks;
    private final FramePacing pacing;
    private final Complaints complaints = new Complaints(LOG);
    private Opening opening;
    private long answeredDeadline = Long.MIN_VALUE;
    private long ownRetryNanos;

    Duty(LaneParts parts, Waiting waiting, LaneSinks sinks, Opening opening) {
        this.clock = parts.clock();
        this.journal = parts.journal();
        this.state = parts.state();
        this.troubles = parts.troubles();
        this.waiting = waiting;
        this.sinks = sinks;
        this.opening = opening;
        this.ownRetryNanos = clock.realNanos();
        this.pacing = new FramePacing(clock.realNanos());
    }

    /** Does what is to be done now, and says for how many real nanoseconds nothing else is due. */
    long turn() {
        if (!opening.isEmpty()) {
            open();
        }
        work();
        state.settle(journal);
        answer();
        draw();
        return Math.min(pacing.untilDue(clock.realNanos()), untilOwnInput());
    }

    // The start's own entries come before all others, and nothing is taken in until they are kept.
    private void open() {
        if (clock.realNanos() - ownRetryNanos < 0) {
            return;
        }
        Batch batch = Batch.of(state.lastEntry(), opening.micros(), opening.inputs(), List.of());
        if (keep(batch)) {
            opening = Opening.none();
            follow(batch);
        } else {
            ownRetryNanos = clock.realNanos() + RETRY_NANOS;
        }
    }

    private void work() {
        List<Waiting.Offer> offers = waiting.take(Limits.BATCH_INPUTS);
        if (!opening.isEmpty()) {
            refuse(offers, troubles.of(TROUBLE));
            return;
        }
        long now = Math.max(clock.now().micros(), state.lastMicros());
        List<Input> own = isDeadlineDue(now) ? List.of(new Input.Deadline()) : List.of();
        Batch batch = Batch.of(state.lastEntry(), now, own, offers);
        if (batch.isEmpty()) {
            return;
        }
        long deadline = state.deadline().orElse(Long.MIN_VALUE);
        if (keep(batch)) {
            if (!own.isEmpty()) {
                answeredDeadline = deadline;
            }
            follow(batch);
        } else {
            ownRetryNanos = clock.realNanos() + RETRY_NANOS;
            refuse(offers, troubles.of(TROUBLE));
        }
    }

    // A deadline that stands on after it was answered would make the lane spin; once is enough.
    private boolean isDeadlineDue(long nowMicros) {
        OptionalLong deadline = state.deadline();
        return deadline.isPresent()
                && deadline.getAsLong() <= nowMicros
                && deadline.getAsLong() != answeredDeadline
                && clock.realNanos() - ownRetryNanos >= 0;
    }

    private boolean keep(Batch batch) {
        long begun = clock.realNanos();
        Appended appended = append(batch.entries());
        if (appended.isKept()) {
            troubles.clear(TROUBLE);
            guarded(
                    "metrics",
                    () ->
                            sinks.meter()
                                    .committed(batch.entries().size(), clock.realNanos() - begun));
            return true;
        }
        troubles.raise(TROUBLE, appended.trouble());
        pacing.changed();
        guarded("metrics", () -> sinks.meter().lost(batch.entries().size()));
        return false;
    }

    private Appended append(List<Entry> entries) {
        try {
            return journal.append(entries);
        } catch (RuntimeException e) {
            complaints.about("journal", e);
            return Appended.lost("The journal fails: nothing new is kept. Look at it now.");
        }
    }

    private void follow(Batch batch) {
        List<Outcome> outcomes = new ArrayList<>();
        List<Effect> effects = new ArrayList<>();
        for (Entry entry : batch.entries()) {
            Outcome outcome = state.apply(entry);
            outcomes.add(outcome);
            effects.addAll(outcome.effects());
            guarded("metrics", () -> sinks.meter().applied(entry, outcome));
        }
        pacing.changed();
        if (!effects.isEmpty()) {
            guarded("effects", () -> sinks.effects().release(effects));
        }
        acknowledge(batch, outcomes);
    }

    private void acknowledge(Batch batch, List<Outcome> outcomes) {
        List<List<Outcome>> parts = batch.byOffer(outcomes);
        for (int i = 0; i < parts.size(); i++) {
            Waiting.Offer offer = batch.offers().get(i);
            if (offer.inputs().stream().anyMatch(Input.Edge.class::isInstance)) {
                pacing.edge(offer.realNanos());
            }
            Receipt receipt = new Receipt(parts.get(i), null);
            guarded("receiver of a receipt", () -> offer.done().accept(receipt));
        }
    }

    /** Tells everyone in these offers that they were not taken in. */
    void refuse(List<Waiting.Offer> offers, String why) {
        for (Waiting.Offer offer : offers) {
            Receipt receipt = new Receipt(List.of(), why);
            guarded("receiver of a receipt", () -> offer.done().accept(receipt));
        }
    }

    private void answer() {
        for (Consumer<Engine> question : waiting.takeQuestions()) {
            guarded("question", () -> question.accept(state.engine()));
        }
    }

    private void draw() {
        if (pacing.untilDue(clock.realNanos()) > 0) {
            return;
        }
        pacing.begun(clock.realNanos());
        View view = new View(state.pictureMicros(clock.now().micros()), troubles.words());
        guarded("frames", () -> sinks.frames().accept(state.engine(), view));
        long took = pacing.edgeToFrameNanos(clock.realNanos());
        guarded("metrics", () -> sinks.meter().drawn(took));
    }

    private long untilOwnInput() {
        long untilRetry = ownRetryNanos - clock.realNanos();
        if (!opening.isEmpty()) {
            return untilRetry;
        }
        OptionalLong deadline = state.deadline();
        if (deadline.isEmpty() || deadline.getAsLong() == answeredDeadline) {
            return Long.MAX_VALUE;
        }
        long micros = Math.min(deadline.getAsLong() - clock.now().micros(), Limits.WAIT_MICROS);
        return Math.max(micros * 1_000 / clock.speed() + 1, untilRetry);
    }

    private void guarded(String adapter, Runnable call) {
        try {
            call.run();
        } catch (RuntimeException e) {
            complaints.about(adapter, e);
        }
    }
}
