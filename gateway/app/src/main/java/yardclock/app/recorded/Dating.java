package yardclock.app.recorded;

import yardclock.core.time.Exchange;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Dates a recording's edges in gateway time, station by station, as a gateway would have.
 *
 * <p>Each station is taken for one boot of one unit. In {@link Mode#LIVE} an edge is dated with the
 * exchanges that were back before it arrived; in {@link Mode#FINAL} once enough later ones are in.
 */
public final class Dating {
    /** When an edge is dated. */
    public enum Mode {
        LIVE,
        FINAL
    }

    private final Recording recording;
    private final Mode mode;

    public Dating(Recording recording, Mode mode) {
        this.recording = recording;
        this.mode = mode;
    }

    /** One stamp an edge, in the recording's order; empty where there is no bound. */
    public List<Optional<Stamp>> stamps() {
        List<Optional<Stamp>> stamps = new ArrayList<>();
        recording.edges().forEach(edge -> stamps.add(Optional.empty()));
        recording.edges().stream()
                .map(Recording.EdgeRow::station)
                .distinct()
                .forEach(station -> date(station, stamps));
        return stamps;
    }

    private void date(String station, List<Optional<Stamp>> stamps) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < stamps.size(); i++) {
            if (recording.edges().get(i).station().equals(station)) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingLong(i -> sortKey(recording.edges().get(i))));
        List<Recording.ExchangeRow> exchanges =
                recording.exchanges().stream()
                        .filter(row -> row.station().equals(station))
                        .sorted(
                                Comparator.comparingLong(
                                        Recording.ExchangeRow::gatewayReceivedMicros))
                        .toList();
        ExchangeClock clock = new ExchangeClock();
        int taken = 0;
        for (int i : order) {
            Recording.EdgeRow edge = recording.edges().get(i);
            while (taken < exchanges.size() && isDue(exchanges.get(taken), edge, clock)) {
                clock.accept(exchange(exchanges.get(taken)));
                taken++;
            }
            stamps.set(i, stamp(clock, edge));
        }
    }

    private long sortKey(Recording.EdgeRow edge) {
        return mode == Mode.LIVE ? edge.gatewayArrivalMicros() : edge.stationMicros();
    }

    private boolean isDue(Recording.ExchangeRow row, Recording.EdgeRow edge, ExchangeClock clock) {
        return mode == Mode.LIVE
                ? row.gatewayReceivedMicros() < edge.gatewayArrivalMicros()
                : !clock.isSettled(new StationTick(edge.stationMicros()));
    }

    private static Exchange exchange(Recording.ExchangeRow row) {
        return new Exchange(
                row.gatewaySentMicros(),
                row.stationReceivedMicros(),
                row.stationSentMicros(),
                row.gatewayReceivedMicros());
    }

    private Optional<Stamp> stamp(ExchangeClock clock, Recording.EdgeRow edge) {
        StationTick tick = new StationTick(edge.stationMicros());
        GatewayTime arrival = new GatewayTime(edge.gatewayArrivalMicros());
        return mode == Mode.LIVE ? clock.at(tick, arrival) : clock.settled(tick, arrival);
    }
}
