package yardclock.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.core.engine.Entry;
import yardclock.core.engine.InputKind;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

class JournalFileTest {
    @TempDir Path directory;

    @Test
    void keepsEveryKindOfInputAsItWas() throws Exception {
        List<Entry> given = Samples.numbered(Samples.oneOfEachKindWithoutPlan());
        EnumSet<InputKind> kinds = EnumSet.of(InputKind.PLAN);
        given.forEach(entry -> kinds.add(entry.input().kind()));
        assertThat(kinds).containsExactlyInAnyOrder(InputKind.values());

        try (JournalFile journal = open(new ArrayList<>())) {
            assertThat(journal.append(given).isKept()).isTrue();
        }

        List<Entry> found = new ArrayList<>();
        try (JournalFile journal = open(found)) {
            assertThat(journal.lastEntry()).isEqualTo(given.size());
        }
        assertThat(found).isEqualTo(given);
    }

    @Test
    void goesOnCountingAndChainingAfterAReopening() throws Exception {
        try (JournalFile journal = open(new ArrayList<>())) {
            journal.append(Samples.edges(1, 5));
        }
        try (JournalFile journal = open(new ArrayList<>())) {
            assertThat(journal.append(Samples.edges(6, 9)).isKept()).isTrue();
        }
        List<Entry> found = new ArrayList<>();
        open(found).close();
        assertThat(found).isEqualTo(Samples.edges(1, 9));
    }

    @Test
    void replaysOnlyUpToTheEntryAskedFor() throws Exception {
        List<Entry> found = new ArrayList<>();
        try (JournalFile journal = open(new ArrayList<>())) {
            journal.append(Samples.edges(1, 9));
            journal.replay(4, found::add);
        }
        assertThat(found).isEqualTo(Samples.edges(1, 4));
    }

    @Test
    void refusesASecondGatewayOnTheSameDirectoryUntilTheFirstIsGone() throws Exception {
        JournalFile first = open(new ArrayList<>());
        assertThatThrownBy(() -> open(new ArrayList<>()))
                .isInstanceOf(JournalRefusedException.class)
                .hasMessageContaining("Another gateway runs on");
        first.close();
        open(new ArrayList<>()).close();
    }

    @Test
    void refusesAFormatNewerThanItself() throws Exception {
        open(new ArrayList<>()).close();
        try (Connection outside = outside();
                Statement statement = outside.createStatement()) {
            statement.execute("PRAGMA user_version = 99");
        }
        assertThatThrownBy(() -> open(new ArrayList<>()))
                .isInstanceOf(JournalRefusedException.class)
                .hasMessageContaining("newer Yardclock");
    }

    @Test
    void refusesAFileThatIsNoDatabase() throws Exception {
        Files.writeString(directory.resolve(JournalFile.NAME), "a shopping list, not a journal");
        assertThatThrownBy(() -> open(new ArrayList<>()))
                .isInstanceOf(JournalRefusedException.class);
        assertThatThrownBy(() -> JournalReader.open(directory.resolve(JournalFile.NAME)))
                .isInstanceOf(JournalRefusedException.class);
    }

    @Test
    void aFullDiskLosesOnlyTheBatchAtHandAndTheNextIsKeptOnceThereIsRoom() throws Exception {
        try (JournalFile journal = open(new ArrayList<>())) {
            journal.append(Samples.edges(1, 10));
            limitPages(journal, 8);

            var lost = journal.append(Samples.edges(11, 1_010));
            assertThat(lost.isKept()).isFalse();
            assertThat(lost.trouble()).startsWith("The disk is full");
            assertThat(journal.lastEntry()).isEqualTo(10);

            limitPages(journal, 1_000_000);
            assertThat(journal.append(Samples.edges(11, 20)).isKept()).isTrue();
        }
        List<Entry> found = new ArrayList<>();
        open(found).close();
        assertThat(found).isEqualTo(Samples.edges(1, 20));
    }

    @Test
    void waitsForNoProgramThatHoldsTheFileForLong() throws Exception {
        try (JournalFile journal = open(new ArrayList<>());
                Connection outside = outside();
                Statement statement = outside.createStatement()) {
            journal.append(Samples.edges(1, 3));
            statement.execute("BEGIN IMMEDIATE");
            assertThat(journal.append(Samples.edges(4, 5)).trouble())
                    .startsWith("Another program holds the journal");
            statement.execute("ROLLBACK");
            assertThat(journal.append(Samples.edges(4, 6)).isKept()).isTrue();
        }
    }

    @Test
    void readsBesideARunningWriterAndLeavesNothingBehind() throws Exception {
        Path file = directory.resolve(JournalFile.NAME);
        try (JournalFile journal = open(new ArrayList<>())) {
            journal.append(Samples.edges(1, 3));
            try (JournalReader reader = JournalReader.open(file)) {
                assertThat(reader.entries(entry -> {})).isEqualTo(3);
                journal.append(Samples.edges(4, 6));
                assertThat(reader.entries(entry -> {})).isEqualTo(6);
            }
        }
        try (JournalReader reader = JournalReader.open(file)) {
            assertThat(reader.entries(entry -> {})).isEqualTo(6);
        }
        assertThat(directory.resolve(JournalFile.NAME + "-wal")).doesNotExist();
        assertThat(directory.resolve(JournalFile.NAME + "-shm")).doesNotExist();
    }

    @Test
    void writesAnEdgeAsALineWithExactlyTheNamesThatArePromised() throws Exception {
        List<String> lines = new ArrayList<>();
        try (JournalFile journal = open(new ArrayList<>())) {
            journal.append(Samples.edges(1, 1));
            try (JournalReader reader = JournalReader.open(directory.resolve(JournalFile.NAME))) {
                reader.lines(lines::add);
            }
        }
        assertThat(lines)
                .containsExactly(
                        "{\"entry\":1,\"kind\":\"edge\",\"gatewayMicros\":10,\"unit\":\"fu-01\","
                                + "\"boot\":\"0011223344556677\",\"seq\":1,\"sensor\":3,"
                                + "\"state\":1,\"tick\":1000}");
    }

    private JournalFile open(List<Entry> found) throws JournalRefusedException {
        return JournalFile.open(directory, found::add);
    }

    private Connection outside() throws Exception {
        return DriverManager.getConnection("jdbc:sqlite:" + directory.resolve(JournalFile.NAME));
    }

    private static void limitPages(JournalFile journal, int pages) throws Exception {
        try (Statement statement = journal.connection().createStatement()) {
            statement.execute("PRAGMA max_page_count = " + pages);
        }
    }
}
