package yardclock.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.core.engine.Entry;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A writing process is killed in the middle of it; what it had acknowledged must be there. */
class JournalCrashTest {
    private static final int ROUNDS = 3;
    private static final int ACKNOWLEDGED_BEFORE_THE_KILL = 40;

    @TempDir Path directory;

    @Test
    void nothingAcknowledgedIsMissingAfterAKill() throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            long acknowledged = writeUntilKilled();

            List<Entry> found = new ArrayList<>();
            try (JournalFile journal = JournalFile.open(directory, found::add)) {
                assertThat(journal.lastEntry()).isGreaterThanOrEqualTo(acknowledged);
            }
            assertThat(found).isEqualTo(Samples.edges(1, found.size()));
        }
    }

    private long writeUntilKilled() throws Exception {
        Process writer =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Writer.class.getName(),
                                directory.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        long acknowledged = 0;
        try (BufferedReader lines = writer.inputReader()) {
            String line = lines.readLine();
            for (int n = 0; line != null; n++) {
                acknowledged = Long.parseLong(line);
                if (n == ACKNOWLEDGED_BEFORE_THE_KILL) {
                    // By its handle: the process object would close the pipe on our side too.
                    writer.toHandle().destroyForcibly();
                }
                line = lines.readLine();
            }
        }
        assertThat(writer.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(acknowledged).isPositive();
        return acknowledged;
    }

    /** Appends batches for ever and prints the last number of each one once it is kept. */
    static final class Writer {
        private static final int BATCH = 7;

        private Writer() {}

        public static void main(String[] args) throws Exception {
            JournalFile journal = JournalFile.open(Path.of(args[0]), entry -> {});
            while (true) {
                long from = journal.lastEntry() + 1;
                if (journal.append(Samples.edges(from, from + BATCH - 1)).isKept()) {
                    System.out.println(journal.lastEntry());
                }
            }
        }
    }
}
