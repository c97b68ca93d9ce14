package yardclock.app.recorded;

import java.util.List;

/**
 * Exchanges and edges of several stations, in the files' order. All figures are microseconds, of
 * the station's counter or of gateway time.
 */
public record Recording(List<ExchangeRow> exchanges, List<EdgeRow> edges) {
    public Recording {
        exchanges = List.copyOf(exchanges);
        edges = List.copyOf(edges);
    }

    /** One exchange's four stamps. */
    public record ExchangeRow(
            String station,
            long gatewaySentMicros,
            long stationReceivedMicros,
            long stationSentMicros,
            long gatewayReceivedMicros) {}

    /** One edge: its stamp, and when the gateway had it. */
    public record EdgeRow(String station, long stationMicros, long gatewayArrivalMicros) {}
}
