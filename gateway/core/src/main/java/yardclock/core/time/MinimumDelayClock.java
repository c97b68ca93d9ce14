package yardclock.core.time;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A plain clock estimate: the exchange with the shortest round trip among the newest ones gives the
 * offset, and all of them together give the limits.
 *
 * <p>The limits rest on causality and one assumption. A message can't arrive before it was sent, so
 * the unit's receipt lies after the gateway's sending and the unit's sending before the gateway's
 * receipt; and the two clocks drift apart by no more than {@link #RATE_BOUND_PPM}. Each exchange
 * gives such limits for any tick, wider with distance; their intersection holds. Arithmetic of the
 * four stamps: RFC 5905 section 8.
 *
 * <p>When exchanges contradict each other the clock was not what it was assumed to be: all but the
 * newest are dropped, and what was asked has no bound until the next one. A tick that lies after
 * its own arrival says nothing about the exchanges: it has no bound, and they stand.
 */
public final class MinimumDelayClock implements UnitClock {
    static final int EXCHANGES_KEPT = 32;
    static final int EXCHANGES_FOR_OFFSET = 8;
    static final long RATE_BOUND_PPM = 100;

    /** A unit stamps in whole microseconds and reads its counter a little late. */
    static final long READING_MICROS = 200;

    /** Answers overtake each other now and then; so many in a row, and the one before was wrong. */
    static final int BACKWARDS_IN_A_ROW = 4;

    private final Deque<Exchange> newest = new ArrayDeque<>();
    private long accepted;
    private long contradictions;
    private int backwards;

    @Override
    public boolean accept(Exchange exchange) {
        if (isImpossible(exchange)) {
            return false;
        }
        Exchange last = newest.peekLast();
        if (last != null && exchange.unitReceivedTick() < last.unitReceivedTick()) {
            backwards++;
            if (backwards < BACKWARDS_IN_A_ROW) {
                return false;
            }
            contradictions++;
            newest.clear();
        }
        backwards = 0;
        newest.addLast(exchange);
        if (newest.size() > EXCHANGES_KEPT) {
            newest.removeFirst();
        }
        accepted++;
        return true;
    }

    private static boolean isImpossible(Exchange exchange) {
        return exchange.gatewayReceivedMicros() < exchange.gatewaySentMicros()
                || exchange.unitSentTick() < exchange.unitReceivedTick()
                || exchange.roundTripMicros() < 0;
    }

    @Override
    public Optional<Stamp> at(StationTick tick, GatewayTime arrival) {
        if (newest.isEmpty()) {
            return Optional.empty();
        }
        long lower = Long.MIN_VALUE;
        long upper = Long.MAX_VALUE;
        for (Exchange exchange : newest) {
            lower = Math.max(lower, lowerLimit(exchange, tick.micros()));
            upper = Math.min(upper, upperLimit(exchange, tick.micros()));
        }
        if (lower > upper) {
            contradictions++;
            Exchange last = newest.peekLast();
            newest.clear();
            newest.addLast(last);
            return Optional.empty();
        }
        if (lower > arrival.micros()) {
            return Optional.empty();
        }
        upper = Math.min(upper, arrival.micros());
        long estimate = centre(bestForOffset(), tick.micros());
        return Optional.of(new Stamp(Math.min(upper, Math.max(lower, estimate)), lower, upper));
    }

    private static long lowerLimit(Exchange exchange, long tick) {
        long since = tick - exchange.unitReceivedTick();
        return exchange.gatewaySentMicros() + since - drift(since) - READING_MICROS;
    }

    private static long upperLimit(Exchange exchange, long tick) {
        long since = tick - exchange.unitSentTick();
        return exchange.gatewayReceivedMicros() + since + drift(since) + READING_MICROS;
    }

    /** How far the clocks can have drifted apart over this time; rounded up. */
    private static long drift(long micros) {
        return Math.abs(micros) * RATE_BOUND_PPM / 1_000_000 + 1;
    }

    private static long centre(Exchange exchange, long tick) {
        long unitMiddle = exchange.unitReceivedTick() / 2 + exchange.unitSentTick() / 2;
        long gatewayMiddle =
                exchange.gatewaySentMicros() / 2 + exchange.gatewayReceivedMicros() / 2;
        return gatewayMiddle + (tick - unitMiddle);
    }

    private Exchange bestForOffset() {
        Exchange best = newest.peekLast();
        int seen = 0;
        for (var it = newest.descendingIterator(); it.hasNext() && seen < EXCHANGES_FOR_OFFSET; ) {
            Exchange candidate = it.next();
            seen++;
            if (candidate.roundTripMicros() < best.roundTripMicros()) {
                best = candidate;
            }
        }
        return best;
    }

    @Override
    public ClockStatus status(GatewayTime now) {
        if (newest.isEmpty()) {
            return new ClockStatus(accepted, 0, -1, -1, -1);
        }
        Exchange best = bestForOffset();
        long age = now.micros() - newest.peekLast().gatewayReceivedMicros();
        long width = best.roundTripMicros() + 2 * READING_MICROS + 2 * drift(Math.max(0, age));
        return new ClockStatus(accepted, 0, best.roundTripMicros(), width, Math.max(0, age));
    }

    @Override
    public String toString() {
        return accepted
                + " exchanges, "
                + contradictions
                + " contradictions, "
                + backwards
                + " backwards, newest "
                + newest;
    }
}
