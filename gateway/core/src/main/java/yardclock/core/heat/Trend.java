package yardclock.core.heat;

import yardclock.core.course.HeatRules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Where temperature and dew point are going, by the median of the slopes between all pairs of
 * recent readings (Theil 1950; Sen 1968): one wild reading of five does not turn it. Advice only:
 * it never changes a level.
 *
 * <p>It looks at one source over {@value #LOOKED_AT_MINUTES} minutes and needs {@value #LEAST}
 * readings over {@value #SPAN_MINUTES}; it says nothing beyond {@value #AHEAD_MINUTES} minutes. No
 * slope counts beyond 4 °C/h of air and 3 °C/h of dew point. The figures are this project's heat
 * design.
 */
public final class Trend {
    static final int LOOKED_AT_MINUTES = 45;
    static final int SPAN_MINUTES = 20;
    static final int AHEAD_MINUTES = 30;
    static final int LEAST = 5;
    private static final int AIR_PER_HOUR_MAX = 4;
    private static final int DEW_POINT_PER_HOUR_MAX = 3;
    private static final long MINUTE = 60_000_000;
    private static final long HOUR = 60 * MINUTE;

    private Trend() {}

    /** A level that is likely reached, and about when. */
    public record Rise(int level, long atMicros) {}

    /**
     * @param readings of any sources, the newest last; those of the newest one's source count
     * @param level the level now; only a higher one is told
     */
    public static Optional<Rise> rise(
            List<HeatReading> readings, int level, HeatRules rules, int workWatts) {
        List<HeatReading> recent = recent(readings);
        if (recent.size() < LEAST || spanMicros(recent) < SPAN_MINUTES * MINUTE) {
            return Optional.empty();
        }
        HeatReading newest = recent.get(recent.size() - 1);
        Line air = Line.through(recent, Trend::airC, AIR_PER_HOUR_MAX);
        Line dewPoint = Line.through(recent, Trend::dewPointC, DEW_POINT_PER_HOUR_MAX);
        for (int minutes = 1; minutes <= AHEAD_MINUTES; minutes++) {
            long at = newest.measuredMicros() + minutes * MINUTE;
            HeatReading then = then(newest, at, air.at(at), dewPoint.at(at));
            boolean isReadable = ReadingLevel.wrong(then, rules, workWatts).isEmpty();
            int reached = isReadable ? ReadingLevel.of(then, rules, workWatts).level() : level;
            if (reached > level) {
                return Optional.of(new Rise(reached, at));
            }
        }
        return Optional.empty();
    }

    private static List<HeatReading> recent(List<HeatReading> readings) {
        if (readings.isEmpty()) {
            return List.of();
        }
        HeatReading newest = readings.get(readings.size() - 1);
        long from = newest.measuredMicros() - LOOKED_AT_MINUTES * MINUTE;
        return readings.stream()
                .filter(r -> r.from().source().equals(newest.from().source()))
                .filter(r -> r.measuredMicros() >= from)
                .toList();
    }

    private static long spanMicros(List<HeatReading> recent) {
        return recent.get(recent.size() - 1).measuredMicros() - recent.get(0).measuredMicros();
    }

    private static double airC(HeatReading reading) {
        return reading.centiCelsius() / 100.0;
    }

    private static double dewPointC(HeatReading reading) {
        return Vapour.dewPointC(airC(reading), reading.centiPercent() / 100.0);
    }

    /** All else as it was read last; the air cannot hold more than it can. */
    private static HeatReading then(HeatReading newest, long at, double airC, double dewPointC) {
        double part = Vapour.saturationPa(Math.min(dewPointC, airC)) / Vapour.saturationPa(airC);
        return new HeatReading(
                newest.from(),
                at,
                at,
                newest.epochSecond() + (at - newest.measuredMicros()) / 1_000_000,
                (int) StrictMath.round(airC * 100),
                (int) StrictMath.round(part * 10_000),
                newest.globeCentiCelsius(),
                newest.windMmPerS(),
                newest.solarWm2(),
                newest.sky());
    }

    /**
     * Through the medians.
     *
     * @param perHour slope
     * @param from value at {@code zeroMicros}
     */
    record Line(double perHour, double from, long zeroMicros) {
        static Line through(
                List<HeatReading> readings, ToDoubleFunction<HeatReading> value, double most) {
            long zero = readings.get(0).measuredMicros();
            List<Double> slopes = new ArrayList<>();
            for (int i = 0; i < readings.size(); i++) {
                for (int j = i + 1; j < readings.size(); j++) {
                    HeatReading one = readings.get(i);
                    HeatReading other = readings.get(j);
                    long apart = other.measuredMicros() - one.measuredMicros();
                    if (apart > 0) {
                        double rise = value.applyAsDouble(other) - value.applyAsDouble(one);
                        slopes.add(rise * HOUR / apart);
                    }
                }
            }
            double slope = Math.max(-most, Math.min(most, median(slopes)));
            List<Double> starts =
                    readings.stream()
                            .map(
                                    r ->
                                            value.applyAsDouble(r)
                                                    - slope * (r.measuredMicros() - zero) / HOUR)
                            .toList();
            return new Line(slope, median(starts), zero);
        }

        double at(long micros) {
            return from + perHour * (micros - zeroMicros) / HOUR;
        }
    }

    static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
