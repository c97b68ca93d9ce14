package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The clock of one boot of one unit, by its exchanges: estimates with limits that hold.
 *
 * <p>Made of {@link ClockSegment}s. An exchange that contradicts those before it ends the segment:
 * the counter jumped, or ran as no crystal does. A tick from between two segments may lie on either
 * side of the jump, so its limits cover both readings, and {@link #isDoubtful} says so.
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
    private long newestReceivedTick = Long.MIN_VALUE;
    private long newestSentMicros = Long.MIN_VALUE;

    @Override
    public boolean accept(Exchange exchange) {
        if (isImpossible(exchange)) {
            impossible++;
            return false;
        }
        if (isOvertaken(exchange)) {
            // Asked earlier as well: the messages changed places on the way, the ticks did not.
            backwards += exchange.gatewaySentMicros() > newestSentMicros ? 1 : 0;
            return false;
        }
        newestReceivedTick = exchange.unitReceivedTick();
        newestSentMicros = exchange.gatewaySentMicros();
        accepted++;
        boolean isFirst = segments.isEmpty();
        segments.removeIf(segment -> segment.firstTick() > exchange.unitReceivedTick());
        if (segments.isEmpty()) {
            begin(exchange);
            if (!isFirst) {
                fault(exchange);
            }
            return true;
        }
        ClockSegment current = current();
        current.history.add(exchange);
        if (current.isContradictory()) {
            current.history.removeNewest();
            fault(exchange);
            begin(exchange);
        }
        return true;
    }

    private void fault(Exchange exchange) {
        faults++;
        lastFaultMicros = exchange.gatewayReceivedMicros();
    }

    private static boolean isImpossible(Exchange exchange) {
        return exchange.gatewayReceivedMicros() < exchange.gatewaySentMicros()
                || exchange.unitSentTick() < exchange.unitReceivedTick()
                || exchange.roundTripMicros() < 0;
    }

    /** One wild tick must not shut out all that follow: several in a row overrule it. */
    private boolean isOvertaken(Exchange exchange) {
        boolean backwards = exchange.unitReceivedTick() < newestReceivedTick;
        backwardsInARow = backwards ? backwardsInARow + 1 : 0;
        return backwards && backwardsInARow < BACKWARDS_OVERRULE;
    }

    private void begin(Exchange exchange) {
        ClockSegment segment = new ClockSegment();
        segment.history.add(exchange);
        segments.add(segment);
        if (segments.size() > SEGMENTS_KEPT) {
            segments.remove(0);
        }
    }

    private ClockSegment current() {
        return segments.get(segments.size() - 1);
    }

    @Override
    public Optional<Stamp> at(StationTick tick, GatewayTime arrival) {
        return stamp(tick.micros(), arrival.micros(), true);
    }

    @Override
    public Optional<Stamp> settled(StationTick tick, GatewayTime arrival) {
        return stamp(tick.micros(), arrival.micros(), false);
    }

    @Override
    public boolean isSettled(StationTick tick) {
        if (segments.isEmpty()) {
            return false;
        }
        return current().lastMiddle() >= tick.micros() + ClockEstimator.FINAL_WINDOW_MICROS;
    }

    private Optional<Stamp> stamp(long tick, long arrivalMicros, boolean live) {
        if (segments.isEmpty()) {
            return Optional.empty();
        }
        int at = segmentOf(tick);
        Stamp stamp = answer(segments.get(at), tick, arrivalMicros, live).stamp();
        boolean between = tick > segments.get(at).lastTick() && at + 1 < segments.size();
        if (stamp != null && between) {
            return union(stamp, answer(segments.get(at + 1), tick, arrivalMicros, live).stamp());
        }
        return Optional.ofNullable(stamp);
    }

    private static ClockEstimator.Answer answer(
            ClockSegment segment, long tick, long arrivalMicros, boolean live) {
        ClockEstimator estimator = segment.estimator(tick, arrivalMicros);
        return live ? estimator.live() : estimator.settled();
    }

    private static Optional<Stamp> union(Stamp before, Stamp after) {
        if (after == null) {
            return Optional.empty();
        }
        long lower = Math.min(before.lowerMicros(), after.lowerMicros());
        long upper = Math.max(before.upperMicros(), after.upperMicros());
        return Optional.of(new Stamp(before.micros(), lower, upper));
    }

    /** The last segment that began at or before the tick, or the first one. */
    private int segmentOf(long tick) {
        int at = 0;
        while (at + 1 < segments.size() && segments.get(at + 1).firstTick() <= tick) {
            at++;
        }
        return at;
    }

    @Override
    public boolean isDoubtful(StationTick tick) {
        if (segments.size() < 2) {
            return false;
        }
        int at = segmentOf(tick.micros());
        return at + 1 < segments.size() && tick.micros() > segments.get(at).lastTick();
    }

    @Override
    public Optional<Stamp> elapsed(StationTick start, StationTick finish) {
        if (segments.isEmpty() || segmentOf(start.micros()) != segmentOf(finish.micros())) {
            return Optional.empty();
        }
        ClockSegment segment = segments.get(segmentOf(start.micros()));
        if (isDoubtful(finish) || segment.history.size() < ClockEstimator.BAND_LEAST) {
            return Optional.empty();
        }
        ClockEstimator.Answer answer = segment.estimator(finish.micros(), Long.MAX_VALUE).live();
        long ticks = finish.micros() - start.micros();
        double slow = (answer.rateLowPpm() - ClockEstimator.WANDER_PPM) * 1e-6;
        double fast = (answer.rateHighPpm() + ClockEstimator.WANDER_PPM) * 1e-6;
        double reading = 2 * ClockEstimator.READING_MICROS;
        long lower = ticks + (long) Math.floor(ticks * slow - reading);
        long upper = ticks + (long) Math.ceil(ticks * fast + reading);
        long middle = ticks + (long) Math.rint(ticks * answer.ratePpm() * 1e-6);
        return Optional.of(new Stamp(Math.max(lower, Math.min(upper, middle)), lower, upper));
    }

    @Override
    public Optional<ClockEnd> first() {
        return segments.isEmpty() ? Optional.empty() : ClockEnd.first(segments.get(0));
    }

    @Override
    public Optional<ClockEnd> last() {
        return segments.isEmpty() ? Optional.empty() : ClockEnd.last(current());
    }

    @Override
    public ClockStatus status(GatewayTime now) {
        if (segments.isEmpty()) {
            return unknown();
        }
        ClockSegment segment = current();
        int newest = segment.history.size() - 1;
        long age = Math.max(0, now.micros() - segment.history.gatewayReceived(newest));
        long tick = segment.history.unitSent(newest) + age;
        ClockEstimator.Answer answer = segment.estimator(tick, Long.MAX_VALUE).live();
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
