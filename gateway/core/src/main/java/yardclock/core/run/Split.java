package yardclock.core.run;

import yardclock.core.course.Text;

/**
 * A turn's time between start and finish, as it stands now.
 *
 * @param label what it is called before a person looks at it
 * @param micros −1 while incomplete; then so are the limits
 * @param automaticMicros as the triggers gave it, −1 if they did not
 * @param handMicros by the proctor's own taps, −1 without a pair
 * @param why how the finish was found, or what is missing
 */
public record Split(
        String station,
        SplitState state,
        SplitLabel label,
        long micros,
        long lowerMicros,
        long upperMicros,
        long automaticMicros,
        long handMicros,
        Text why) {
    /** Whether nothing speaks against confirming it. */
    public boolean clean() {
        return label == SplitLabel.CLEAN;
    }
}
