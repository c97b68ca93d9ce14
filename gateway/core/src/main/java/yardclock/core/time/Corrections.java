package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which correction was in force for one unit, and when. It belongs to one boot, begins for edges
 * that arrive from an instant on and ends for those that arrive later than another: what was
 * stamped under it stays so, also when its final stamp is made after the end.
 *
 * <p>Owned by one thread.
 */
public final class Corrections {
    /** Corrections older than this many concern edges whose stamps were final long ago. */
    static final int SPANS_KEPT = 8;

    private final List<Span> spans = new ArrayList<>();

    private record Span(String boot, long fromMicros, long untilMicros, Correction correction) {
        boolean holds(String ofBoot, long arrivedMicros) {
            return boot.equals(ofBoot)
                    && arrivedMicros >= fromMicros
                    && arrivedMicros < untilMicros;
        }

        Span endedAt(long micros) {
            return new Span(boot, fromMicros, Math.min(untilMicros, micros), correction);
        }
    }

    /** From now on this one, or none; nothing changes when it is in force already. */
    public void set(Optional<Correction> correction, String boot, long nowMicros) {
        boolean same =
                current().equals(correction)
                        && (spans.isEmpty() || last().boot().equals(boot) || correction.isEmpty());
        if (same) {
            return;
        }
        if (!spans.isEmpty()) {
            spans.set(spans.size() - 1, last().endedAt(nowMicros));
        }
        correction.ifPresent(c -> spans.add(new Span(boot, nowMicros, Long.MAX_VALUE, c)));
        if (spans.size() > SPANS_KEPT) {
            spans.remove(0);
        }
    }

    /** The one in force now. */
    public Optional<Correction> current() {
        return spans.isEmpty() || last().untilMicros() < Long.MAX_VALUE
                ? Optional.empty()
                : Optional.of(last().correction());
    }

    private Span last() {
        return spans.get(spans.size() - 1);
    }

    /** The one that was in force for an edge of a boot when it arrived. */
    public Optional<Correction> of(String boot, long arrivedMicros) {
        return spans.stream()
                .filter(span -> span.holds(boot, arrivedMicros))
                .map(Span::correction)
                .findFirst();
    }

    @Override
    public String toString() {
        return spans.toString();
    }
}
