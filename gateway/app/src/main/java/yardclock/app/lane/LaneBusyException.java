package yardclock.app.lane;

/** A question could not be put to the lane: too many wait already, or the lane has ended. */
public final class LaneBusyException extends RuntimeException {
    private static final long serialVersionUID = 1;

    LaneBusyException(String words) {
        super(words);
    }
}
