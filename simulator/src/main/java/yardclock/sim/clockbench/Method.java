package yardclock.sim.clockbench;

import yardclock.app.recorded.Dating;
import yardclock.app.recorded.Recording;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A way to date edges. All see the same exchanges; live, only those that were back before the edge
 * arrived. The plain ones have no limits of their own: their stamps are as wide as a point.
 */
public enum Method {
    OURS_LIVE("Yardclock, live"),
    OURS_FINAL("Yardclock, final"),
    ARRIVAL("time of arrival"),
    LAST_EXCHANGE("last exchange"),
    MINIMUM_FILTER("RFC 5905 eight-stage filter"),
    ROBUST_LINE("robust line over 300 s");

    private static final int STAGES = 8;

    private final String words;

    Method(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether its stamps come with limits. */
    public boolean hasLimits() {
        return this == OURS_LIVE || this == OURS_FINAL;
    }

    /** One stamp an edge, in the recording's order. */
    public List<Optional<Stamp>> stamps(Recording recording) {
        return switch (this) {
            case OURS_LIVE -> new Dating(recording, Dating.Mode.LIVE).stamps();
            case OURS_FINAL -> new Dating(recording, Dating.Mode.FINAL).stamps();
            case ARRIVAL, LAST_EXCHANGE, MINIMUM_FILTER, ROBUST_LINE -> plain(recording);
        };
    }

    private List<Optional<Stamp>> plain(Recording recording) {
        List<Optional<Stamp>> stamps = new ArrayList<>();
        for (Recording.EdgeRow edge : recording.edges()) {
            List<Recording.ExchangeRow> back =
                    recording.exchanges().stream()
                            .filter(row -> row.station().equals(edge.station()))
                            .filter(
                                    row ->
                                            row.gatewayReceivedMicros()
                                                    < edge.gatewayArrivalMicros())
                            .toList();
            stamps.add(Optional.of(point(estimate(edge, back))));
        }
        return stamps;
    }

    private static Stamp point(long micros) {
        return new Stamp(micros, micros, micros);
    }

    private long estimate(Recording.EdgeRow edge, List<Recording.ExchangeRow> back) {
        if (this == ARRIVAL || back.isEmpty()) {
            return edge.gatewayArrivalMicros();
        }
        int last = back.size() - 1;
        return switch (this) {
            case LAST_EXCHANGE -> edge.stationMicros() + Math.round(offset(back.get(last)));
            case MINIMUM_FILTER -> edge.stationMicros() + Math.round(offset(filtered(back)));
            default -> edge.stationMicros() + Math.round(RobustLine.at(edge, back));
        };
    }

    /** Of the newest eight the one with the shortest round trip. */
    private static Recording.ExchangeRow filtered(List<Recording.ExchangeRow> back) {
        return back.subList(Math.max(0, back.size() - STAGES), back.size()).stream()
                .min(Comparator.comparingLong(Method::roundTrip))
                .orElseThrow();
    }

    /** Gateway time − unit time: minus theta of RFC 5905 section 8. */
    static double offset(Recording.ExchangeRow row) {
        double down = row.gatewaySentMicros() - row.stationReceivedMicros();
        double up = row.gatewayReceivedMicros() - row.stationSentMicros();
        return (down + up) / 2;
    }

    /** Delta of RFC 5905 section 8. */
    static long roundTrip(Recording.ExchangeRow row) {
        return (row.gatewayReceivedMicros() - row.gatewaySentMicros())
                - (row.stationSentMicros() - row.stationReceivedMicros());
    }
}
