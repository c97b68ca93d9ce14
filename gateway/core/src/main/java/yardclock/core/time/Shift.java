package yardclock.core.time;

/**
 * By how much one time line is ahead of another, with limits: an instant that reads t on the first
 * reads t + shift on the second. Microseconds; both limits included.
 */
public record Shift(long lowerMicros, long upperMicros) {
    public static final Shift NONE = new Shift(0, 0);

    public Shift {
        if (lowerMicros > upperMicros) {
            throw new IllegalArgumentException("shift " + lowerMicros + " … " + upperMicros);
        }
    }

    /** The middle, which is never further off than half the width. */
    public long micros() {
        return lowerMicros + (upperMicros - lowerMicros) / 2;
    }

    public long widthMicros() {
        return upperMicros - lowerMicros;
    }

    public Shift plus(Shift next) {
        return new Shift(lowerMicros + next.lowerMicros, upperMicros + next.upperMicros);
    }

    /** The same shift once the first line's readings have been moved by so much already. */
    public Shift less(long movedMicros) {
        return new Shift(lowerMicros - movedMicros, upperMicros - movedMicros);
    }

    boolean admits(long micros) {
        return lowerMicros <= micros && micros <= upperMicros;
    }
}
