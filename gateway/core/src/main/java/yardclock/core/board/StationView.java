package yardclock.core.board;

import yardclock.core.course.Text;

/**
 * One station as staff see it.
 *
 * @param state ready, in use or to be reset
 * @param number the candidate on it, or 0
 * @param sinceMicros gateway time since when it is so
 * @param trouble what is wrong with its field units or sensors, or empty
 * @param held whether a sensor's trouble keeps new candidates from being released
 */
public record StationView(
        String id,
        Text name,
        State state,
        int number,
        long sinceMicros,
        String trouble,
        boolean held) {

    /** A station goes round these three. */
    public enum State {
        READY,
        IN_USE,
        TO_BE_RESET
    }
}
