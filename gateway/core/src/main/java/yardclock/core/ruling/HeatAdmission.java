package yardclock.core.ruling;

import yardclock.core.heat.watch.HeatStatus;
import yardclock.core.heat.watch.HeatStatus.Freshness;
import yardclock.core.heat.watch.HeatWatch;

import java.util.List;
import java.util.Optional;

/**
 * What the heat watch allows. It holds new releases and stops nobody: those who move are stopped by
 * a person. Pure, a look at the watch.
 */
final class HeatAdmission {
    /** The level at which nobody new is released. */
    private static final int HOLDS_FROM = 3;

    /** No gust was ever measured above this, 113 m/s (World Meteorological Organization). */
    private static final int GUST_MAX = 113_000;

    private HeatAdmission() {}

    static List<Refusal> against(Act act, HeatWatch heat, long nowMicros) {
        boolean isImpossible =
                switch (act.kind()) {
                    case HAND_READING -> isWrong((Act.HandReading) act, heat, nowMicros);
                    case GUST_READ -> isWrong(((Act.GustRead) act).millimetresPerSecond());
                    default -> false;
                };
        return isImpossible ? List.of(Refusal.READING_IMPOSSIBLE) : List.of();
    }

    private static boolean isWrong(int gustMmPerS) {
        return gustMmPerS < 0 || gustMmPerS > GUST_MAX;
    }

    private static boolean isWrong(Act.HandReading act, HeatWatch heat, long nowMicros) {
        String instrument = act.instrument();
        boolean isNamed = instrument != null && !instrument.isBlank();
        return !isNamed
                || instrument.length() > Admission.WORDS_MAX
                || heat.isImpossible(HeatActs.reading(act, "device", "person", nowMicros));
    }

    /**
     * Why the heat watch holds new releases now, if it does. While nobody read anything all day it
     * holds nothing: whether a day without any reading begins at all is for its checklist.
     */
    static Optional<Refusal> againstReleases(HeatWatch heat, long nowMicros) {
        HeatStatus status = heat.status(nowMicros);
        if (status.floor() >= HOLDS_FROM) {
            return Optional.of(Refusal.HEAT_HOLDS);
        }
        if (status.freshness() == Freshness.SILENT) {
            return Optional.of(Refusal.HEAT_SILENT);
        }
        boolean isToSee = status.freshness() == Freshness.UNKNOWN && !heat.isAcknowledged();
        return isToSee ? Optional.of(Refusal.HEAT_UNKNOWN) : Optional.empty();
    }
}
