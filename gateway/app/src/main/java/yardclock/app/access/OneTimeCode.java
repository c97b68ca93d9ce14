package yardclock.app.access;

/** A code to tell to one person. */
public record OneTimeCode(String code) {
    /** Without the code: it must not get into a log. */
    @Override
    public String toString() {
        return "OneTimeCode";
    }
}
