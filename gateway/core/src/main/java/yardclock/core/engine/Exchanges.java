package yardclock.core.engine;

import yardclock.core.time.Exchange;

/** Exchanges as the clocks take them, from answers as the journal keeps them. */
final class Exchanges {
    private Exchanges() {}

    static Exchange of(Input.ExchangeAnswered answer) {
        return new Exchange(
                answer.gatewaySentMicros(),
                answer.unitReceivedTick(),
                answer.unitSentTick(),
                answer.gatewayReceivedMicros());
    }

    static Exchange of(Input.TabletExchange answer) {
        return new Exchange(
                answer.gatewaySentMicros(),
                answer.tabletReceivedTick(),
                answer.tabletSentTick(),
                answer.gatewayReceivedMicros());
    }
}
