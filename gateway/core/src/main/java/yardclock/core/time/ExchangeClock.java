package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The clock of one boot of one unit, by its exchanges: estimates with limits that hold.
 *
 * <p>Made of {@link ClockSegment}s. An exchange that contradicts those before it ends the segment:
 * the counter jumped, or ran as no crystal does. A tick from near the jump may lie on either side
 * of it, so its limits cover both readings, and {@link #isDoubtful} says so.
 *
 * <p>Owned by one thread. One exchange costs one pass over the segment's bounded history.
 */
public final class ExchangeClock implements UnitClock {
    /** A clock that jumps more often than this in a day is replaced, not reckoned with. */
    static final int SEGMENTS_KEPT = 8;

    /** So many answers in a row that run backwards say that the one before them was wrong. */
    static final int BACKWARDS_OVERRULE = 4;

    private final List<ClockSegment> segments = new ArrayList<>();
    private long accepted;
    private long impossible;
    private long backwards;
    private long faults;
    private long lastFaultMicros = -1;
    private int backwardsInARow;
    private Exchange newest;

    @Override
    public boolean accept(Exchange exchange) {
        if (isImpossible(exchange)) {
            impossible++;
            return false;
        }
        if (isRepeated(exchange)) {
            return false;
        }
        if (isOvertaken(exchange)) {
            // Asked earlier as well: the messages changed places on the way, the ticks did not.
            boolean isAskedLater = exchange.gatewaySentMicros() > newest.gatewaySentMicros();
            backwards += isAskedLater ? 1 : 0;
            return false;
        }
        newest = exchange;
        accepted++;
        dropUnconfirmed(exchange);
        if (segments.isEmpty()) {
            segments.add(new ClockSegment(exchange));
            return true;
        }
        ClockSegment current = current();
        if (exchange.unitReceivedTick() < current.lastReceivedTick()) {
            breakOff(exchange);
            return true;
        }
        current.history.add(exchange);
        if (current.isContradictory()) {
            current.history.cutTo(current.history.size() - 1);
            breakOff(exchange);
        }
        return true;
    }

    private static boolean isImpossible(Exchange exchange) {
        return exchange.gatewayReceivedMicros() < exchange.gatewaySentMicros()
                || exchange.unitSentTick() < exchange.unitReceivedTick()
                || exchange.roundTripMicros() < 0;
    }

    /** One question is answered once; its answer come twice would count twice. */
    private boolean isRepeated(Exchange exchange) {
        return newest != null
                && exchange.gatewaySentMicros() == newest.gatewaySentMicros()
                && exchange.unitReceivedTick() == newest.unitReceivedTick()
                && exchange.unitSentTick() == newest.unitSentTick();
    }

    /** One wild tick must not shut out all that follow: several in a row overrule it. */
    private boolean isOvertaken(Exchange exchange) {
        boolean backwards =
                newest != null && exchange.unitReceivedTick() < newest.unitReceivedTick();
        backwardsInARow = backwards ? backwardsInARow + 1 : 0;
        return backwards && backwardsInARow < BACKWARDS_OVERRULE;
    }

    /** A single answer ahead of all that follow it was wrong; what was before it goes on. */
    private void dropUnconfirmed(Exchange exchange) {
        boolean isAhead =
                !segments.isEmpty() && exchange.unitReceivedTick() < current().lastReceivedTick();
        if (isAhead && current().history.size() == 1) {
            segments.remove(segments.size() - 1);
            if (!segments.isEmpty()) {
                current().reopen();
            }
        }
    }

    private void breakOff(Exchange exchange) {
        faults++;
        lastFaultMicros = exchange.gatewayReceivedMicros();
        ClockSegment next = current().endAt(exchange);
        if (current().history.size() == 0) {
            segments.remove(segments.size() - 1);
        }
        segments.add(next);
        if (segments.size() > SEGMENTS_KEPT) {
            segments.remove(0);
            segments.get(0).standAlone();
        }
    }

    private ClockSegment current() {
        return segments.get(segments.size() - 1);
    }

    @Override
    public Optional<Stamp> at(StationTick tick, GatewayTime arrival) {
        return stamp(tick.micros(), arrival.micros(), ClockEstimator::live);
    }

    @Override
    public Optional<Stamp> settled(StationTick tick, GatewayTime arrival) {
        return stamp(tick.micros(), arrival.micros(), ClockEstimator::settled);
    }

    @Override
    public Optional<Stamp> within(StationTick tick, GatewayTime arrival) {
        return stamp(tick.micros(), arrival.micros(), ClockEstimator::liveLimits);
    }

    @Override
    public boolean isSettled(StationTick tick) {
        if (segments.isEmpty()) {
            return false;
        }
        return current().isConfirmed(tick.micros() + ClockEstimator.FINAL_WINDOW_MICROS)
                || !holders(tick.micros()).contains(current());
    }

    /** Where each segment that may hold the tick puts it, taken together. */
    private Optional<Stamp> stamp(
            long tick, long arrivalMicros, Function<ClockEstimator, ClockEstimator.Answer> with) {
        Stamp all = null;
        for (ClockSegment segment : holders(tick)) {
            Stamp stamp = with.apply(segment.estimator(tick, arrivalMicros)).stamp();
            if (stamp != null) {
                all = all == null ? stamp : union(all, stamp);
            } else if (with.apply(segment.estimator(tick, Long.MAX_VALUE)).stamp() == null) {
                return Optional.empty();
            }
        }
        return Optional.ofNullable(all);
    }

    private static Stamp union(Stamp before, Stamp after) {
        long lower = Math.min(before.lowerMicros(), after.lowerMicros());
        long upper = Math.max(before.upperMicros(), after.upperMicros());
        return new Stamp(before.micros(), lower, upper);
    }

    /** The segments that may hold the tick, in their order: two near a jump, none in a leap. */
    private List<ClockSegment> holders(long tick) {
        List<ClockSegment> holders = new ArrayList<>(2);
        for (ClockSegment segment : segments) {
            if (segment.mayHold(tick)) {
                holders.add(segment);
            }
        }
        return holders;
    }

    @Override
    public boolean isDoubtful(StationTick tick) {
        return holders(tick.micros()).size() > 1;
    }

    @Override
    public Optional<Stamp> elapsed(StationTick start, StationTick finish) {
        List<ClockSegment> holders = holders(finish.micros());
        if (holders.size() != 1 || !holders.equals(holders(start.micros()))) {
            return Optional.empty();
        }
        return holders.get(0).elapsed(start.micros(), finish.micros());
    }

    @Override
    public long faults() {
        return faults;
    }

    @Override
    public long exchanges() {
        return accepted;
    }

    @Override
    public Optional<ClockEnd> first() {
        boolean isSure =
                !segments.isEmpty()
                        && segments.get(0).mayHold(Long.MIN_VALUE)
                        && segments.get(0).history.size() > 1;
        return isSure ? ClockEnd.first(segments.get(0)) : Optional.empty();
    }

    @Override
    public Optional<ClockEnd> last() {
        return segments.isEmpty() ? Optional.empty() : ClockEnd.last(current());
    }

    @Override
    public ClockStatus status(GatewayTime now) {
        return status(now, ClockEstimator::live);
    }

    @Override
    public ClockStatus limits(GatewayTime now) {
        return status(now, ClockEstimator::liveLimits);
    }

    private ClockStatus status(
            GatewayTime now, Function<ClockEstimator, ClockEstimator.Answer> with) {
        if (segments.isEmpty()) {
            return unknown();
        }
        ClockSegment segment = current();
        int newest = segment.history.size() - 1;
        long age = Math.max(0, now.micros() - segment.history.gatewayReceived(newest));
        long tick = segment.history.unitSent(newest) + age;
        ClockEstimator.Answer answer = with.apply(segment.estimator(tick, Long.MAX_VALUE));
        long width = answer.stamp() == null ? -1 : answer.stamp().widthMicros();
        return new ClockStatus(
                accepted,
                impossible,
                backwards,
                faults,
                lastFaultMicros,
                Math.round(answer.ratePpm() * 1000),
                Math.round(answer.rateLowPpm() * 1000),
                Math.round(answer.rateHighPpm() * 1000),
                Math.round(answer.floorRoundTripMicros()),
                width,
                age);
    }

    int segments() {
        return segments.size();
    }

    int exchangesKept() {
        return segments.stream().mapToInt(segment -> segment.history.size()).sum();
    }

    @Override
    public ClockTrace trace(GatewayTime now) {
        return segments.isEmpty() ? ClockTrace.empty() : ClockTracer.trace(current(), now.micros());
    }

    private ClockStatus unknown() {
        long limit = Math.round(ClockEstimator.RATE_LIMIT_PPM * 1000);
        return new ClockStatus(
                accepted, impossible, backwards, faults, -1, 0, -limit, limit, -1, -1, -1);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append(accepted).append('/').append(impossible).append('/').append(backwards);
        text.append('/').append(faults).append('@').append(lastFaultMicros);
        for (ClockSegment segment : segments) {
            text.append(' ').append(segment.history);
        }
        return text.toString();
    }
}
