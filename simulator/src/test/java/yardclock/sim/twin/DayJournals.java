package yardclock.sim.twin;

import yardclock.app.journal.JournalFile;

import java.nio.file.Path;

/** Days in virtual time as journal files on disk. */
public final class DayJournals {
    private DayJournals() {}

    /** Plays a day to its end and writes its journal into a directory; returns the file. */
    public static Path write(long seed, int candidates, Path directory) throws Exception {
        return write(new TwinDay(seed, candidates), directory);
    }

    /** The same of a day on which much goes wrong. */
    public static Path writeRough(long seed, int candidates, Path directory) throws Exception {
        return write(new TwinDay(seed, candidates, Scenario.ROUGH), directory);
    }

    private static Path write(TwinDay day, Path directory) throws Exception {
        day.play();
        try (JournalFile journal = JournalFile.open(directory, entry -> {})) {
            journal.append(day.journal());
        }
        return directory.resolve(JournalFile.NAME);
    }
}
