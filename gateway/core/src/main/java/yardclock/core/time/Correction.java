package yardclock.core.time;

/**
 * What a calibration says of one unit's stamps: by how much the estimate is moved, and how far from
 * it the instant lies at most if the calibration's assumption holds.
 *
 * <p>Moving an estimate never moves a guaranteed limit, and never leaves the limits. The declared
 * interval stands beside the guaranteed one; it assumes that messages take as long each way as they
 * did while the units were calibrated.
 *
 * @param micros added to the estimate
 * @param declaredMicros half the declared width of a stamp whose guaranteed width is usual
 * @param usualWidthMicros the guaranteed width that stamps had while calibrating
 */
public record Correction(long micros, long declaredMicros, long usualWidthMicros) {
    /** What the paths and the crystal may do between two trips and a stamp hours later. */
    public static final long ALLOWANCE_MICROS = 500;

    /** Of the scatter of single trips as they were stamped, so much either way. */
    static final long SPREADS = 3;

    /**
     * @param spreadMicros scatter of the differences between stamps as they were made
     */
    public static Correction of(long micros, long spreadMicros, long usualWidthMicros) {
        long declared = SPREADS * spreadMicros + ALLOWANCE_MICROS;
        return new Correction(micros, declared, Math.max(1, usualWidthMicros));
    }

    /** The same limits, the estimate moved as far as they let it. */
    public Stamp applied(Stamp stamp) {
        return stamp.shifted(micros);
    }

    /**
     * The declared interval of a corrected stamp. When the guaranteed one is wider than it was
     * while calibrating, as in an outage, the declared one grows in proportion.
     */
    public Stamp declared(Stamp corrected) {
        long half = declaredMicros;
        if (corrected.widthMicros() > usualWidthMicros) {
            half = Math.multiplyExact(half, corrected.widthMicros()) / usualWidthMicros;
        }
        return new Stamp(
                corrected.micros(),
                Math.max(corrected.lowerMicros(), corrected.micros() - half),
                Math.min(corrected.upperMicros(), corrected.micros() + half));
    }
}
