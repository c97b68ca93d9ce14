package yardclock.sim.people;

/**
 * What ends or spoils a run.
 *
 * @param station the station's place in the course from 0
 * @param permille how far into that station's time it happens
 */
public record Mishap(Kind kind, int station, int permille) {
    /** No mishap. */
    public static final Mishap NONE = new Mishap(Kind.NONE, -1, 0);

    /** What happens. */
    public enum Kind {
        NONE,
        FAULT,
        WITHDRAWAL
    }

    public boolean isAt(int stationIndex) {
        return kind != Kind.NONE && station == stationIndex;
    }
}
