package yardclock.app.pins;

import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * What is to be seen and heard of a state: pure, of the state and of real time alone.
 *
 * <p>The mapping is our own (decision 0033). A level is told by a number of blinks, which needs no
 * colour; steady lamps are named by their job. Whatever has no power says stop, or "not known".
 */
final class SignalPattern {
    /** From one row of blinks to the next; four blinks and a clear pause. */
    static final long CYCLE_NANOS = TimeUnit.MILLISECONDS.toNanos(6_000);

    static final long BLINK_NANOS = TimeUnit.MILLISECONDS.toNanos(500);

    private SignalPattern() {}

    /** A row of sounds that began once. */
    record Sound(Reason reason, int count, long eachNanos, long sinceNanos) {
        enum Reason {
            NOTHING,
            LEVEL,
            HOLD,
            STOP
        }

        static final Sound NONE = new Sound(Reason.NOTHING, 0, 0, 0);

        /** Sounds and the pauses between them are equally long. */
        boolean isHeard(long nowNanos) {
            long past = nowNanos - sinceNanos;
            return count > 0 && past < length() && past / eachNanos % 2 == 0;
        }

        boolean isOver(long nowNanos) {
            return nowNanos - sinceNanos >= length();
        }

        private long length() {
            return eachNanos * (2L * count - 1);
        }
    }

    /**
     * What the horn says after a change: 8 s for a stop, 1 s for a hold of releases, as many short
     * sounds as the level when it has risen. What is more urgent is not broken off.
     *
     * @param before null for the first look of all
     */
    static Sound next(Sound sound, YardSignal before, YardSignal now, long nowNanos) {
        Sound called = called(before, now, nowNanos);
        boolean isUnderWay = !sound.isOver(nowNanos);
        boolean isMoreUrgent = called.reason().compareTo(sound.reason()) > 0;
        boolean isNew = called.count() > 0 && (isMoreUrgent || !isUnderWay);
        boolean isRestarted = sound.reason() == Sound.Reason.STOP && !now.isStopped();
        Sound kept = isRestarted ? Sound.NONE : sound;
        return isNew ? called : kept;
    }

    private static Sound called(YardSignal before, YardSignal now, long nowNanos) {
        boolean wasStopped = before != null && before.isStopped();
        boolean wasHeld = before != null && before.isHeld();
        if (now.isStopped() && !wasStopped) {
            return sound(Sound.Reason.STOP, 1, 8_000, nowNanos);
        }
        if (before != null && now.isHeld() && !wasHeld) {
            return sound(Sound.Reason.HOLD, 1, 1_000, nowNanos);
        }
        if (before != null && now.level() > Math.max(0, before.level())) {
            return sound(Sound.Reason.LEVEL, now.level(), 400, nowNanos);
        }
        return Sound.NONE;
    }

    private static Sound sound(Sound.Reason reason, int count, long eachMillis, long nowNanos) {
        return new Sound(reason, count, TimeUnit.MILLISECONDS.toNanos(eachMillis), nowNanos);
    }

    /** What has power now, but for the pulse; all else has none. */
    static Set<OutputJob> energised(YardSignal signal, Sound sound, long nowNanos) {
        Set<OutputJob> on = EnumSet.noneOf(OutputJob.class);
        if (!signal.isStopped()) {
            on.add(OutputJob.RUN);
        }
        if (!signal.isHeld()) {
            on.add(OutputJob.RELEASE);
        }
        if (isHeatLit(signal.level(), Math.floorMod(nowNanos, CYCLE_NANOS))) {
            on.add(OutputJob.HEAT);
        }
        if (!sound.isHeard(nowNanos)) {
            on.add(OutputJob.QUIET);
        }
        return on;
    }

    private static boolean isHeatLit(int level, long inCycleNanos) {
        long blink = inCycleNanos / (2 * BLINK_NANOS);
        boolean isFirstHalf = inCycleNanos % (2 * BLINK_NANOS) < BLINK_NANOS;
        return level == 0 || blink < level && isFirstHalf;
    }
}
