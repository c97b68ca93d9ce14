package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Answer;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Inbox.Receipt;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Takes rulings from tablets and answers each after its commit, with what the rules said.
 *
 * <p>An answer that does not come in time leaves open whether the ruling was kept; sending it again
 * with the same key is always right.
 */
final class RulingDesk {
    private final Inbox inbox;
    private final Bodies bodies;
    private final Refusals refusals;

    RulingDesk(Inbox inbox, Bodies bodies, Refusals refusals) {
        this.inbox = inbox;
        this.bodies = bodies;
        this.refusals = refusals;
    }

    /** The answer to an accepted ruling. */
    record Accepted(boolean accepted, long entry) {}

    void take(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isPresent()) {
            Answer<Input.Ruling> ruling = read(body.get(), Gate.theHolder(request));
            if (ruling.isRefused()) {
                refusals.refuse(request, ruling);
            } else {
                rule(request, ruling.value());
            }
        }
    }

    private static Answer<Input.Ruling> read(Bodies.Body body, Holder holder) {
        Fields fields = new Fields(body.json());
        String key = fields.text("key", WebLimits.ID_CHARS);
        long deviceMicros = fields.whole("deviceMicros", 0, WebLimits.EXACT_MAX);
        long basis = fields.whole("basis", -1, WebLimits.EXACT_MAX);
        Answer<Act> act = ActReader.read(fields.object("act"));
        if (!fields.wrong().isEmpty()) {
            return Answer.refused(WebRefusal.MALFORMED.reason(), fields.wrong());
        }
        if (act.isRefused()) {
            return Answer.refused(act.refused(), act.words());
        }
        if (!act.value().kind().allows(holder.role())) {
            return Answer.refused(Refusal.NOT_YOUR_ROLE);
        }
        return Answer.of(
                new Input.Ruling(
                        key,
                        holder.device(),
                        deviceMicros,
                        body.receivedMicros(),
                        basis,
                        act.value()));
    }

    private void rule(Context request, Input.Ruling ruling) {
        CompletableFuture<Receipt> committed = new CompletableFuture<>();
        if (!inbox.offer(ruling, committed::complete)) {
            refusals.refuse(request, WebRefusal.BUSY);
            return;
        }
        Optional<Receipt> receipt = Waiting.forAnswer(committed, WebLimits.ANSWER_SECONDS);
        if (receipt.isEmpty()) {
            refusals.refuse(request, WebRefusal.NO_ANSWER);
        } else if (!receipt.get().isKept()) {
            refusals.refuse(request, WebRefusal.JOURNAL_TROUBLE, receipt.get().lost());
        } else {
            answer(request, receipt.get().outcomes().get(0).verdict());
        }
    }

    private void answer(Context request, Verdict verdict) {
        if (verdict == null) {
            refusals.refuse(request, WebRefusal.ONLY_COLLECTED);
        } else if (verdict.isAccepted()) {
            Replies.json(request, new Accepted(true, verdict.entry()));
        } else {
            refusals.refuse(request, verdict.refusal());
        }
    }
}
