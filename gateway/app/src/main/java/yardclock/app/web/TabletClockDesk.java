package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Answer;
import yardclock.app.lane.Inbox.Receipt;
import yardclock.core.engine.Input;
import yardclock.core.fact.FactKind;

import java.io.IOException;
import java.util.Optional;

/**
 * Takes tablets' answers to the clock questions on their streams. The gateway's receipt is the
 * moment the request's headers were in: the tablet read its clock before it sent them.
 */
final class TabletClockDesk {
    private final TabletExchanges exchanges;
    private final LiveStreams live;
    private final Bodies bodies;
    private final Commits commits;
    private final Refusals refusals;

    TabletClockDesk(
            TabletExchanges exchanges,
            LiveStreams live,
            Bodies bodies,
            Commits commits,
            Refusals refusals) {
        this.exchanges = exchanges;
        this.live = live;
        this.bodies = bodies;
        this.commits = commits;
        this.refusals = refusals;
    }

    /**
     * The answer to an exchange.
     *
     * @param compared whether the tablet's clock is compared now; an exchange that contradicts
     *     itself compares nothing
     */
    record Compared(boolean compared) {}

    /** The answer to a page with a new clock: on how many streams it is asked. */
    record Wanted(int streams) {}

    void take(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isEmpty()) {
            return;
        }
        Fields fields = new Fields(body.get().json());
        String id = fields.text("id", WebLimits.ID_CHARS);
        String boot = fields.text("boot", WebLimits.ID_CHARS);
        long received = fields.whole("received", 0, WebLimits.EXACT_MAX);
        long sent = fields.whole("sent", received, WebLimits.EXACT_MAX);
        if (!fields.wrong().isEmpty()) {
            refusals.refuse(request, WebRefusal.MALFORMED, fields.wrong());
            return;
        }
        String device = Gate.theHolder(request).device();
        Answer<TabletExchanges.Question> question = exchanges.take(device, id);
        if (question.isRefused()) {
            refusals.refuse(request, question);
            return;
        }
        long asked = question.value().gatewaySentMicros();
        long arrived = Bodies.arrivedMicros(request);
        commits.keep(
                        request,
                        new Input.TabletExchange(device, boot, id, asked, received, sent, arrived))
                .ifPresent(receipt -> Replies.json(request, new Compared(isTaken(receipt))));
    }

    private static boolean isTaken(Receipt receipt) {
        return receipt.outcomes().stream()
                .flatMap(outcome -> outcome.facts().stream())
                .anyMatch(fact -> fact.kind() == FactKind.EXCHANGE_TAKEN);
    }

    /** A page has a new clock, which should be compared soon. */
    void wanted(Context request) throws IOException {
        if (bodies.read(request).isEmpty()) {
            return;
        }
        int streams = live.askClock(Gate.theHolder(request).device());
        Replies.json(request, new Wanted(streams));
    }
}
