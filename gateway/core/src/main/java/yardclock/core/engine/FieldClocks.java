package yardclock.core.engine;

import yardclock.core.health.Unit;
import yardclock.core.passage.EdgeClocks;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;
import yardclock.core.time.UnitClock;

import java.util.Map;
import java.util.Optional;

/** The clocks of the units, asked about edges that were stamped before. */
final class FieldClocks implements EdgeClocks {
    private final Map<String, Unit> units;

    /**
     * @param units by their ids; the same ones that take in exchanges
     */
    FieldClocks(Map<String, Unit> units) {
        this.units = units;
    }

    @Override
    public Optional<Stamp> settled(TimedEdge edge) {
        StationTick tick = new StationTick(edge.tick());
        return clockOf(edge)
                .filter(clock -> clock.isSettled(tick))
                .flatMap(clock -> clock.settled(tick, new GatewayTime(edge.arrivedMicros())))
                .map(stamp -> unitOf(edge).corrected(edge.boot(), edge.arrivedMicros(), stamp))
                .map(stamp -> stamp.widened(edge.responseMicros(), 0));
    }

    @Override
    public Optional<Stamp> elapsed(TimedEdge start, TimedEdge finish) {
        if (!start.sharesClockWith(finish) || finish.tick() < start.tick()) {
            return Optional.empty();
        }
        return clockOf(start)
                .flatMap(
                        clock ->
                                clock.elapsed(
                                        new StationTick(start.tick()),
                                        new StationTick(finish.tick())));
    }

    private Optional<UnitClock> clockOf(TimedEdge edge) {
        return Optional.ofNullable(unitOf(edge)).flatMap(unit -> unit.knownClock(edge.boot()));
    }

    private Unit unitOf(TimedEdge edge) {
        return units.get(edge.sensor().unit());
    }
}
