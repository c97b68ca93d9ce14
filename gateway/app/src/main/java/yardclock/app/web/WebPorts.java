package yardclock.app.web;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Feed;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Questions;
import yardclock.app.lane.Troubles;

import java.util.concurrent.CompletionStage;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Everything the HTTP side needs from the rest of the gateway.
 *
 * @param state the gateway's state; with its digest when asked with true
 * @param scrape the metrics as text
 * @param refused counts a refusal's reason
 */
public record WebPorts(
        Inbox inbox,
        Questions questions,
        Feed feed,
        Troubles troubles,
        GatewayClock clock,
        Doors doors,
        Documents documents,
        Function<Boolean, CompletionStage<GatewayState>> state,
        Supplier<String> scrape,
        Consumer<String> refused) {}
