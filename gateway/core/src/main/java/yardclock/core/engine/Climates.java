package yardclock.core.engine;

import yardclock.core.course.ExamPlan;
import yardclock.core.fact.Canonical;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Unit;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.time.TimeLines;

import java.util.List;
import java.util.Map;

/** Hands climate readings to the heat watch, dated by their units' clocks. */
final class Climates {
    private static final int MICROS = 1_000_000;

    private final Map<String, Unit> units;
    private final TimeLines lines;
    private final HeatWatch watch;

    /**
     * @param units by their ids; the same ones that take in exchanges
     */
    Climates(ExamPlan plan, Map<String, Unit> units, TimeLines lines, long nowMicros) {
        this.units = units;
        this.lines = lines;
        this.watch = new HeatWatch(plan.heat(), plan.day().workWatts(), nowMicros);
    }

    HeatWatch watch() {
        return watch;
    }

    void read(Input.Climate reading, Clock now, Gathering out) {
        long measured = datedMicros(reading, now.gatewayMicros());
        List<String> wrong =
                watch.take(
                        new HeatReading(
                                HeatReading.From.sensor(reading.source()),
                                now.gatewayMicros(),
                                measured,
                                Math.floorDiv(now.wall().at(measured, now.speed()), MICROS),
                                reading.centiCelsius(),
                                reading.centiPercent(),
                                reading.globeCentiCelsius(),
                                reading.windMillimetresPerSecond(),
                                reading.solarWattsPerSquareMetre(),
                                null));
        if (!wrong.isEmpty()) {
            String words = "An impossible climate reading was refused. " + String.join(" ", wrong);
            out.conclude(Fact.aboutUnit(FactKind.ALARM, reading.source(), words));
        }
    }

    /** Now, and how to say an instant by the wall clock. */
    record Clock(long gatewayMicros, WallReading wall, int speed) {}

    /**
     * When it was read off, as far as its unit's clock can say; when it came, where the unit does
     * not say or the clock was never compared.
     */
    private long datedMicros(Input.Climate reading, long nowMicros) {
        Unit unit = units.get(reading.source());
        if (unit == null || reading.boot().isEmpty()) {
            return nowMicros;
        }
        return unit.dated(reading.boot(), reading.tick(), nowMicros, lines)
                .map(stamp -> Math.min(nowMicros, stamp.micros()))
                .orElse(nowMicros);
    }

    void describe(Canonical text) {
        text.line("heat", watch);
    }
}
