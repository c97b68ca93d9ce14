package yardclock.core.run;

/**
 * A press that marks something: a start, a checkpoint or a finish.
 *
 * @param allowanceMicros what a judged finish adds on either side
 */
record Tap(TabletPress press, long allowanceMicros) {
    /** Null while the press has no time: then it counts as pressed, and marks no instant. */
    Mark mark() {
        if (!press.isDated()) {
            return null;
        }
        Mark.Press by = new Mark.Press(press.device(), allowanceMicros);
        return HandMarks.tap(press.stamp(), press.line(), by);
    }

    boolean isTimed() {
        return press.isDated();
    }

    static Mark markOf(Tap tap) {
        return tap == null ? null : tap.mark();
    }
}
