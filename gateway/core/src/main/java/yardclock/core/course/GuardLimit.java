package yardclock.core.course;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.ToLongFunction;

/**
 * Each guard that is a length of time: its range in microseconds, the reason for the range, and the
 * combinations it means anything with. The plan's reader and the bench refuse by the same limits.
 */
public enum GuardLimit {
    LOCKOUT(
            "lockout",
            new Range(0, 60_000_000, "longer would swallow the next candidate"),
            GuardTimes::lockoutMicros,
            Sets.SENSED),
    STAYS_FOR(
            "staysFor",
            new Range(0, 30_000_000, "a finish must be known while people stand there"),
            GuardTimes::staysForMicros,
            EnumSet.of(
                    Combination.SINGLE,
                    Combination.ALL_OF,
                    Combination.COINCIDENCE,
                    Combination.SEQUENCE)),
    CLEAR_FOR(
            "clearFor",
            new Range(0, 30_000_000, "a finish must be known while people stand there"),
            GuardTimes::clearForMicros,
            EnumSet.of(Combination.SINGLE)),
    STOOD_FOR(
            "stoodFor",
            new Range(0, 10_000_000, "nobody can stand still much longer before a start"),
            GuardTimes::stoodForMicros,
            EnumSet.of(Combination.SINGLE)),
    MIN_BLOCK(
            "minBlock",
            new Range(0, 5_000_000, "a body is through in less"),
            GuardTimes::minBlockMicros,
            EnumSet.of(
                    Combination.SINGLE,
                    Combination.COINCIDENCE,
                    Combination.ANY_OF,
                    Combination.DIRECTION)),
    MERGE_GAP(
            "mergeGap",
            new Range(0, 5_000_000, "wider would join two people into one"),
            GuardTimes::mergeGapMicros,
            Sets.REPEATED),
    WITHIN(
            "within",
            new Range(10_000, 30_000_000, "two beams that belong together are closer than that"),
            GuardTimes::withinMicros,
            EnumSet.of(Combination.COINCIDENCE, Combination.DIRECTION)),
    SPACING(
            "spacing",
            new Range(0, 600_000_000, "a longer pause between two laps is a station of its own"),
            GuardTimes::spacingMicros,
            Sets.REPEATED);

    private final String word;
    private final Range range;
    private final ToLongFunction<GuardTimes> value;
    private final Set<Combination> meantWith;

    GuardLimit(
            String word,
            Range range,
            ToLongFunction<GuardTimes> value,
            Set<Combination> meantWith) {
        this.word = word;
        this.range = range;
        this.value = value;
        this.meantWith = meantWith;
    }

    private record Range(long min, long max, String reason) {}

    private static final class Sets {
        static final Set<Combination> SENSED =
                EnumSet.complementOf(EnumSet.of(Combination.SIGNAL, Combination.JUDGED));
        static final Set<Combination> REPEATED = EnumSet.of(Combination.SINGLE, Combination.ANY_OF);
    }

    /** As the plan has it, {@code staysFor}. */
    public String word() {
        return word;
    }

    public long min() {
        return range.min();
    }

    public long max() {
        return range.max();
    }

    public String reason() {
        return range.reason();
    }

    public long of(GuardTimes times) {
        return value.applyAsLong(times);
    }

    public boolean isMeantWith(Combination combination) {
        return meantWith.contains(combination);
    }

    /**
     * Whether it says what the mark is, and not only what is kept away from it. Such a guard may be
     * adjusted, and neither taken away nor brought in: that would be another rule.
     */
    public boolean makesTheMark() {
        return switch (this) {
            case STAYS_FOR, CLEAR_FOR, STOOD_FOR, WITHIN -> true;
            case LOCKOUT, MIN_BLOCK, MERGE_GAP, SPACING -> false;
        };
    }

    /** Whether a technician may give this trigger another value of it. */
    public boolean isAdjustable(Trigger trigger) {
        return isMeantWith(trigger.combination())
                && (!makesTheMark() || of(trigger.guards().times()) > 0);
    }

    /** The least value a technician may give, in microseconds. */
    public long leastAdjusted() {
        return makesTheMark() ? Math.max(1, min()) : min();
    }

    /** Whether a technician may give this trigger the value, or leaves it as it is. */
    public boolean admits(Trigger trigger, long micros) {
        boolean isAsBefore = micros == of(trigger.guards().times());
        boolean isWithin = micros >= leastAdjusted() && micros <= max();
        return isAsBefore || isAdjustable(trigger) && isWithin;
    }
}
