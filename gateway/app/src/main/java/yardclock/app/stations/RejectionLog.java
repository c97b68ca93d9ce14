package yardclock.app.stations;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What was refused since the start: a count for each reason, and the newest refusals in words.
 *
 * <p>Safe from any thread. It is not journalled: a refused message is no input.
 */
public final class RejectionLog {
    /** What a technician can take in at a glance; the counts keep the rest. */
    static final int NEWEST = 20;

    private final Map<RejectionReason, Long> counts = new EnumMap<>(RejectionReason.class);
    private final Deque<Line> newest = new ArrayDeque<>();

    /** One refusal; the topic is cut to a length that fits a line. */
    public record Line(long gatewayMicros, String topic, RejectionReason reason, String words) {}

    synchronized void add(long gatewayMicros, String topic, Rejection rejection) {
        counts.merge(rejection.reason(), 1L, Long::sum);
        if (newest.size() == NEWEST) {
            newest.removeLast();
        }
        String shortTopic = topic.length() <= 80 ? topic : topic.substring(0, 80) + "…";
        newest.addFirst(new Line(gatewayMicros, shortTopic, rejection.reason(), rejection.words()));
    }

    /** How often this reason was given. */
    public synchronized long count(RejectionReason reason) {
        return counts.getOrDefault(reason, 0L);
    }

    public synchronized long total() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    /** The last 20 refusals, newest first. */
    public synchronized List<Line> newest() {
        return new ArrayList<>(newest);
    }
}
