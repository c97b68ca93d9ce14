package yardclock.core.time;

/**
 * Two stamps of what is taken for one physical occurrence, seen by two clocks.
 *
 * @param reference by the clock that the other one is compared with
 */
public record Coincidence(Stamp reference, Stamp other) {
    /** By how much the other clock's estimate lies after the reference's. */
    public long differenceMicros() {
        return other.micros() - reference.micros();
    }

    /**
     * Whether one instant can lie within both intervals; if not, these were two occurrences.
     *
     * @param lateMicros how late either sensor may answer
     */
    public boolean isPossible(long lateMicros) {
        return reference.lowerMicros() - lateMicros <= other.upperMicros()
                && other.lowerMicros() - lateMicros <= reference.upperMicros();
    }
}
