package yardclock.core.run;

/**
 * What of a turn was tapped on a tablet whose clock was never compared: seen, and without a time.
 */
final class Untimed {
    private Untimed() {}

    static boolean isStart(Turn turn) {
        Tap press = turn.taps.start();
        return turn.start() == null && press != null && !press.isTimed();
    }

    static boolean isFinish(Turn turn) {
        Tap press = turn.taps.finish(turn.allSeenMicros());
        return turn.finish() == null && press != null && !press.isTimed();
    }

    /** Whether a checkpoint was seen only by such a tap. */
    static boolean isCheckpoint(Turn turn) {
        return turn.station.checkpoints().stream()
                .anyMatch(c -> turn.completeMicros(c) == Taps.SEEN_SOMETIME);
    }
}
