package yardclock.app.boot;

/** A command that can't be done, with the sentence the operator gets; it ends with exit code 1. */
public final class RefusedException extends Exception {
    private static final long serialVersionUID = 1;

    RefusedException(String words) {
        super(words);
    }

    RefusedException(String words, Throwable cause) {
        super(words, cause);
    }
}
