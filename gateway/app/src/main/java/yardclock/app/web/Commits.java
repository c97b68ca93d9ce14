package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Inbox;
import yardclock.app.lane.Inbox.Receipt;
import yardclock.core.engine.Input;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Hands an input to the lane and waits, on the request's own thread, until it is kept. */
final class Commits {
    private final Inbox inbox;
    private final Refusals refusals;

    Commits(Inbox inbox, Refusals refusals) {
        this.inbox = inbox;
        this.refusals = refusals;
    }

    /** What became of it, or empty when the request was refused already. */
    Optional<Receipt> keep(Context request, Input input) {
        CompletableFuture<Receipt> committed = new CompletableFuture<>();
        if (!inbox.offer(input, committed::complete)) {
            refusals.refuse(request, WebRefusal.BUSY);
            return Optional.empty();
        }
        Optional<Receipt> receipt = Waiting.forAnswer(committed, WebLimits.ANSWER_SECONDS);
        if (receipt.isEmpty()) {
            refusals.refuse(request, WebRefusal.NO_ANSWER);
        } else if (!receipt.get().isKept()) {
            refusals.refuse(request, WebRefusal.JOURNAL_TROUBLE, receipt.get().lost());
            return Optional.empty();
        }
        return receipt;
    }
}
