package yardclock.core.heat.watch;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Whether one source's readings, in their order, can be believed. A person's are: whoever writes
 * one down has looked at the instrument.
 */
final class Sanity {
    private static final int DEW_POINT_CENTI = 3_200;
    private static final int IDENTICAL = 10;
    private static final long JUMP_WITHIN = 10 * Due.MINUTE;
    private static final int JUMP_CENTI = 200;

    /** A dew point that changes by no more is steady (common practice, no source). */
    private static final int STEADY_CENTI = 50;

    /** Air can warm so much in an hour by itself (the heat design's limit of a trend). */
    private static final int WARMS_CENTI_PER_HOUR = 400;

    private static final long HOUR = 60 * Due.MINUTE;

    /** Enough for a reading a second through the ten minutes looked back on. */
    private static final int KEPT = 600;

    private final Deque<Air> shaded = new ArrayDeque<>();
    private HeatReading last;
    private int identical;
    private Air beforeTheSun;

    private record Air(long measuredMicros, int centiCelsius, int dewPointCentiC) {}

    Taken judge(HeatReading reading, ReadingLevel level) {
        List<Suspicion> suspicions = new ArrayList<>();
        if (!reading.from().isByHand()) {
            if (level.dewPointCentiC() > DEW_POINT_CENTI) {
                suspicions.add(Suspicion.DEW_POINT);
            }
            if (isStuck(reading)) {
                suspicions.add(Suspicion.STUCK);
            }
            if (isInTheSun(reading, level)) {
                suspicions.add(Suspicion.IN_THE_SUN);
            }
        }
        return new Taken(reading, level, List.copyOf(suspicions));
    }

    private boolean isStuck(HeatReading reading) {
        identical = last != null && reading.hasValuesOf(last) ? identical + 1 : 1;
        last = reading;
        return identical >= IDENTICAL;
    }

    /** From the jump on, until the air is no warmer than it can have become without the sun. */
    private boolean isInTheSun(HeatReading reading, ReadingLevel level) {
        Air air = new Air(reading.measuredMicros(), reading.centiCelsius(), level.dewPointCentiC());
        if (beforeTheSun != null && !isCredible(air)) {
            return true;
        }
        shaded.removeIf(past -> air.measuredMicros() - past.measuredMicros() > JUMP_WITHIN);
        beforeTheSun = shaded.stream().filter(past -> isJump(past, air)).findFirst().orElse(null);
        if (beforeTheSun != null) {
            return true;
        }
        shaded.addLast(air);
        if (shaded.size() > KEPT) {
            shaded.removeFirst();
        }
        return false;
    }

    private boolean isCredible(Air air) {
        long since = air.measuredMicros() - beforeTheSun.measuredMicros();
        long warmest =
                beforeTheSun.centiCelsius() + JUMP_CENTI + WARMS_CENTI_PER_HOUR * since / HOUR;
        return air.centiCelsius() <= warmest;
    }

    private static boolean isJump(Air past, Air now) {
        return now.centiCelsius() - past.centiCelsius() > JUMP_CENTI
                && Math.abs(now.dewPointCentiC() - past.dewPointCentiC()) <= STEADY_CENTI;
    }

    @Override
    public String toString() {
        return last + " " + identical + " " + beforeTheSun + " " + shaded;
    }
}
