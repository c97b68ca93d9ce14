package yardclock.app.boot;

import yardclock.app.FreePort;
import yardclock.app.journal.JournalFile;
import yardclock.app.journal.JournalReader;
import yardclock.app.pins.BoardWiring;
import yardclock.core.engine.Entry;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a whole gateway of a test keeps its day, and what its journal says.
 *
 * @param directory the test's own
 * @param mqtt where its embedded broker listens, over restarts too
 */
record DayFolder(Path directory, HostPort mqtt) {
    static DayFolder in(Path directory) throws IOException {
        return new DayFolder(directory, new HostPort("127.0.0.1", FreePort.find()));
    }

    /** The demo's plan and roster at real speed, pages on any port. */
    ServeSettings settings() {
        return settings(new HostPort("127.0.0.1", 0), null, null, 1, BoardWiring.NONE);
    }

    ServeSettings settings(HostPort http, Path plan, Path roster, int speed, BoardWiring board) {
        return new ServeSettings(
                directory.resolve("day"),
                http,
                mqtt,
                "embedded",
                null,
                false,
                plan,
                roster,
                speed,
                board);
    }

    Path journal() {
        return directory.resolve("day").resolve(JournalFile.NAME);
    }

    List<Entry> entries() throws Exception {
        List<Entry> entries = new ArrayList<>();
        try (JournalReader reader = JournalReader.open(journal())) {
            reader.entries(entries::add);
        }
        return entries;
    }
}
