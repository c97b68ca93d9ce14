package yardclock.core.time;

import java.util.List;

/**
 * One clock as a picture: what each leg of the newest exchanges said, seen from the fitted line,
 * the limits around that line, and how steady the clock is over longer and longer spans.
 *
 * <p>All values are microseconds above the line unless they say otherwise. A downlink leg lies
 * below it by the time its message was under way, an uplink leg above it; the envelope lies between
 * the closest of both.
 *
 * @param spanMicros how far back the exchanges and the envelope go
 * @param exchanges oldest first
 * @param envelope oldest first
 * @param steadiness shortest span first; empty while there are too few exchanges
 */
public record ClockTrace(
        long spanMicros,
        List<Residual> exchanges,
        List<Limits> envelope,
        List<Steadiness> steadiness) {
    public ClockTrace {
        exchanges = List.copyOf(exchanges);
        envelope = List.copyOf(envelope);
        steadiness = List.copyOf(steadiness);
    }

    /** Nothing to show yet. */
    public static ClockTrace empty() {
        return new ClockTrace(ClockTracer.SPAN_MICROS, List.of(), List.of(), List.of());
    }

    /** Both legs of one exchange. */
    public record Residual(long ageMicros, long downMicros, long upMicros) {}

    /** Where the true offset lies at one time. */
    public record Limits(long ageMicros, long lowerMicros, long upperMicros) {}

    /**
     * The overlapping Allan deviation over one span.
     *
     * @param partsPerBillion of the span, rounded
     */
    public record Steadiness(long spanMicros, long partsPerBillion) {}
}
