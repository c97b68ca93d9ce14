package yardclock.core.run;

import yardclock.core.course.Text;

/**
 * A turn's time between start and finish, as it stands now.
 *
 * @param clean whether nothing speaks against confirming it
 * @param micros −1 while incomplete; then so are the limits
 * @param automaticMicros as the triggers gave it, −1 if they did not
 * @param handMicros by the proctor's own taps, −1 without a pair
 * @param why how the finish was found, or what is missing
 */
public record Split(
        String station,
        SplitState state,
        boolean clean,
        long micros,
        long lowerMicros,
        long upperMicros,
        long automaticMicros,
        long handMicros,
        Text why) {}
