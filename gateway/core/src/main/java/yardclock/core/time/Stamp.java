package yardclock.core.time;

/**
 * An instant in gateway time with the limits it is known within: the true instant lies between
 * {@code lowerMicros} and {@code upperMicros}, both included, under the assumptions of the clock
 * that made it. All three are microseconds of gateway time.
 */
public record Stamp(long micros, long lowerMicros, long upperMicros) implements Comparable<Stamp> {
    /** What reading a counter may be off by, either way; part of every clock's limits. */
    public static final long READING_MICROS = 200;

    public Stamp {
        if (lowerMicros > micros || micros > upperMicros) {
            throw new IllegalArgumentException(
                    "stamp " + micros + " outside its limits " + lowerMicros + " … " + upperMicros);
        }
    }

    /** Both limits moved outwards; used when a sensor's or a hand's own spread comes on top. */
    public Stamp widened(long earlierMicros, long laterMicros) {
        return new Stamp(micros, lowerMicros - earlierMicros, upperMicros + laterMicros);
    }

    /** An instant that is known exactly, as a limit case. */
    public static Stamp exactly(long micros) {
        return new Stamp(micros, micros, micros);
    }

    /** How much earlier than said it can have been. */
    public long earlierMicros() {
        return micros - lowerMicros;
    }

    /** How much later than said it can have been. */
    public long laterMicros() {
        return upperMicros - micros;
    }

    /** Another estimate within the same limits: as far as they let it go. */
    public Stamp shifted(long byMicros) {
        long to = Math.max(lowerMicros, Math.min(upperMicros, micros + byMicros));
        return new Stamp(to, lowerMicros, upperMicros);
    }

    /** Instant and limits moved together. */
    public Stamp moved(long byMicros) {
        return new Stamp(micros + byMicros, lowerMicros + byMicros, upperMicros + byMicros);
    }

    public long widthMicros() {
        return upperMicros - lowerMicros;
    }

    @Override
    public int compareTo(Stamp other) {
        return Long.compare(micros, other.micros);
    }
}
