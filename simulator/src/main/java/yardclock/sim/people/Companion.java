package yardclock.sim.people;

/**
 * Whoever is beside a candidate and decides when they may go on. Called on the stage; each call
 * says what a person standing there would see at that very moment.
 */
public interface Companion {
    void standsAtStart(Candidate candidate);

    /** A required act was done that no sensor watches. */
    void sees(Candidate candidate, String station, String checkpoint);

    /** The candidate started or finished, and a person tapping it would press now. */
    default void taps(Candidate candidate, String station, String point) {
        // most companions have no tablet
    }

    /**
     * The candidate comes near the next station. The companion answers now or later with {@link
     * Candidate#startAt}; until then the candidate waits.
     *
     * @param plannedStart when they would start if nothing kept them
     */
    void nears(Candidate candidate, int stationIndex, long plannedStart);

    /** The candidate starts on a station. */
    default void begun(Candidate candidate, int stationIndex) {
        // most companions only look on
    }

    /** The candidate is through with a station and walks on, or is done. */
    default void finished(Candidate candidate, int stationIndex) {
        // most companions only walk along
    }

    void mishap(Candidate candidate, int stationIndex, Mishap.Kind kind);
}
