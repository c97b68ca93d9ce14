package yardclock.core.engine;

import yardclock.core.health.Unit;
import yardclock.core.ordering.Watermark;
import yardclock.core.passage.EdgeClocks;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;
import yardclock.core.time.TimeLines;
import yardclock.core.time.UnitClock;

import java.util.Map;
import java.util.Optional;

/** The clocks of the units, asked about edges that were stamped before. */
final class FieldClocks implements EdgeClocks {
    private final Map<String, Unit> units;
    private final TimeLines lines;

    /**
     * @param units by their ids; the same ones that take in exchanges
     */
    FieldClocks(Map<String, Unit> units, TimeLines lines) {
        this.units = units;
        this.lines = lines;
    }

    @Override
    public Optional<Stamp> settled(TimedEdge edge) {
        StationTick tick = new StationTick(edge.tick());
        long carried = lines.carriedMicros(edge.line());
        UnitClock clock = clockOf(edge).orElse(null);
        if (clock == null || !isOver(edge.line()) && !clock.isSettled(tick)) {
            return Optional.empty();
        }
        return clock.settled(tick, new GatewayTime(arrived(edge, carried)))
                .map(stamp -> corrected(edge, carried, stamp).moved(carried))
                .map(stamp -> stamp.widened(edge.responseMicros(), 0));
    }

    /** Clocks of a time line that is over will not be compared any more. */
    private boolean isOver(int line) {
        return line < lines.current();
    }

    /** When the edge was known, as its own line read then; MAX when that was on another line. */
    private static long arrived(TimedEdge edge, long carriedMicros) {
        boolean isElsewhere = edge.arrivedMicros() == Long.MAX_VALUE;
        return isElsewhere ? Long.MAX_VALUE : edge.arrivedMicros() - carriedMicros;
    }

    /** What came over a restart came last: the newest correction was in force. */
    private Stamp corrected(TimedEdge edge, long carriedMicros, Stamp stamp) {
        long arrived = Math.min(arrived(edge, carriedMicros), Long.MAX_VALUE - 1);
        return unitOf(edge).corrected(edge.boot(), arrived, stamp);
    }

    @Override
    public Optional<Stamp> elapsed(TimedEdge start, TimedEdge finish) {
        if (!start.sharesClockWith(finish) || finish.tick() < start.tick()) {
            return Optional.empty();
        }
        UnitClock clock = clockOf(finish).orElse(null);
        boolean isOneLine = start.line() == finish.line();
        if (clock == null || !isOneLine && !isVouchedFor(clock, start, finish)) {
            return Optional.empty();
        }
        return clock.elapsed(new StationTick(start.tick()), new StationTick(finish.tick()));
    }

    @Override
    public boolean isPast(String id, long fromMicros, long toMicros) {
        Unit unit = units.get(id);
        if (unit == null || !unit.watermark().isHeardOf()) {
            return true;
        }
        return isTold(unit, unit.watermark().present(), fromMicros, toMicros)
                || isTold(unit, unit.watermark().before(), fromMicros, toMicros);
    }

    private boolean isTold(Unit unit, Watermark.Told told, long fromMicros, long toMicros) {
        if (told.isNothing() || told.arrivedMicros() < toMicros) {
            return false;
        }
        GatewayTime arrived = new GatewayTime(told.arrivedMicros());
        UnitClock clock = unit.knownClock(told.boot(), lines.current()).orElse(null);
        if (clock == null) {
            return false;
        }
        Stamp to = clock.within(new StationTick(told.toTick()), arrived).orElse(null);
        if (to == null || to.lowerMicros() < toMicros) {
            return false;
        }
        Stamp from = clock.within(new StationTick(told.fromTick()), arrived).orElse(null);
        return from != null && from.upperMicros() <= fromMicros;
    }

    /** A counter that jumped while the gateway was away would contradict the others. */
    private boolean isVouchedFor(UnitClock clock, TimedEdge start, TimedEdge finish) {
        return clock.first().isPresent() && lines.shift(start.line(), finish.line()).isPresent();
    }

    private Optional<UnitClock> clockOf(TimedEdge edge) {
        Unit unit = unitOf(edge);
        return unit == null ? Optional.empty() : unit.knownClock(edge.boot(), edge.line());
    }

    private Unit unitOf(TimedEdge edge) {
        return units.get(edge.sensor().unit());
    }
}
