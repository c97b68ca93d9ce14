package yardclock.core.heat.watch;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReading;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A heat watch with readings by the minute. At 40 % humidity the heat index of 26 °C is 79.0 °F, of
 * 28 °C 82.9, of 33 °C 94.9, of 37 °C 107.7 and of 43 °C 133.7 (computed with the function under
 * {@code HeatIndexTest}).
 */
final class WatchedDay {
    static final long MINUTE = 60_000_000;
    static final int COOL = 2_000;
    static final int CAUTION = 2_800;
    static final int MORE_REST = 3_300;
    static final int HOLD = 3_700;
    static final int STOP = 4_300;
    private static final int PERCENT = 4_000;
    static final int WORK_W = 300;

    final HeatWatch watch;

    WatchedDay() {
        this(HeatRules.DEFAULTS);
    }

    WatchedDay(HeatRules rules) {
        watch = new HeatWatch(rules, WORK_W, 0);
    }

    /** A sensor's reading that comes at once. */
    WatchedDay read(long minute, int centiCelsius) {
        return take(reading("yard", minute, minute, centiCelsius, PERCENT));
    }

    WatchedDay read(long minute, int centiCelsius, int centiPercent) {
        return take(reading("yard", minute, minute, centiCelsius, centiPercent));
    }

    /** One that was read off at {@code measured} and comes later. */
    WatchedDay readLate(long measured, long arrived, int centiCelsius) {
        return take(reading("yard", measured, arrived, centiCelsius, PERCENT));
    }

    WatchedDay readByHand(long minute, int centiCelsius) {
        HeatReading.From from = new HeatReading.From("tablet", "Marlow", "sling psychrometer");
        return take(
                new HeatReading(
                        from,
                        minute * MINUTE,
                        minute * MINUTE,
                        0,
                        centiCelsius,
                        PERCENT,
                        null,
                        null,
                        null,
                        null));
    }

    WatchedDay take(HeatReading reading) {
        List<String> wrong = watch.take(reading);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException(wrong.toString());
        }
        return this;
    }

    static HeatReading reading(
            String source, long measured, long arrived, int centiCelsius, int centiPercent) {
        return new HeatReading(
                HeatReading.From.sensor(source),
                arrived * MINUTE,
                measured * MINUTE,
                0,
                centiCelsius,
                centiPercent,
                null,
                null,
                null,
                null);
    }

    WatchedDay pass(long minute) {
        watch.passTime(minute * MINUTE);
        return this;
    }

    HeatStatus at(long minute) {
        return watch.status(minute * MINUTE);
    }

    /** Every step of the shown history: minute, level, and what else is not as it mostly is. */
    List<String> shown() {
        return watch.changes().stream().map(WatchedDay::line).toList();
    }

    private static String line(HeatChange change) {
        HeatStatus status = change.status();
        String level = status.isUnknown() ? "unknown, was " + status.was() : "" + status.level();
        String confirmation =
                status.confirmation() == HeatStatus.Confirmation.NONE
                        ? ""
                        : " " + status.confirmation();
        String suspicions =
                status.suspicions().stream().map(s -> " " + s).collect(Collectors.joining());
        return change.atMicros() / MINUTE
                + ": "
                + level
                + " "
                + status.freshness()
                + confirmation
                + (status.isLightning() ? " LIGHTNING" : "")
                + suspicions;
    }
}
