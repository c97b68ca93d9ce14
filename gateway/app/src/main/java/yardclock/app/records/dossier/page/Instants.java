package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Further.WallLine;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/**
 * Gateway time as a time of day with its zone. For reading: it follows what the wall clock read,
 * which measures nothing. Thousandths of a second; limits are rounded outwards.
 */
record Instants(List<WallLine> walls, ZoneId zone) {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss.SSS\u00A0'UTC'xxx", Locale.ROOT);
    private static final DateTimeFormatter SHORT =
            DateTimeFormatter.ofPattern("HH:mm:ss.SSS", Locale.ROOT);
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final long MILLI = 1_000;

    /** As {@code 06:05:26.206 UTC−05:00} on one line, to the nearest; a dash for none (below 0). */
    String at(long micros) {
        return micros < 0
                ? "–"
                : format(TIME, Math.floorDiv(wall(micros) + MILLI / 2, MILLI)).replace('-', '−');
    }

    /** As {@code 06:05:26.182 … 06:05:26.209}, in the same zone. */
    String between(long lowerMicros, long upperMicros) {
        return format(SHORT, Math.floorDiv(wall(lowerMicros), MILLI))
                + " … "
                + format(SHORT, -Math.floorDiv(-wall(upperMicros), MILLI));
    }

    String day(long micros) {
        return format(DAY, Math.floorDiv(wall(Math.max(0, micros)), MILLI));
    }

    private String format(DateTimeFormatter formatter, long millis) {
        return formatter.format(Instant.EPOCH.plus(millis, ChronoUnit.MILLIS).atZone(zone));
    }

    /** By the last reading before it, or the first where there is none before. */
    private long wall(long micros) {
        WallLine by = null;
        for (WallLine each : walls) {
            by = by == null || each.gatewayMicros() <= micros ? each : by;
        }
        return by == null
                ? micros
                : by.wallMicros() + Math.floorDiv(micros - by.gatewayMicros(), by.speed());
    }
}
