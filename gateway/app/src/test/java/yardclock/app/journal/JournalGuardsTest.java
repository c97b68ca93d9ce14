package yardclock.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import yardclock.core.engine.Entry;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** A stranger opens the file with default settings, as any database tool would. */
class JournalGuardsTest {
    private static final String VALUES =
            "(entry, kind, gateway_micros, body, previous, hash)"
                    + " VALUES (2, 'deadline', 0, '{}', zeroblob(32), zeroblob(32))";

    @TempDir Path directory;
    private Connection stranger;

    @BeforeEach
    void fillAndOpen() throws Exception {
        try (JournalFile journal = JournalFile.open(directory, entry -> {})) {
            journal.append(Samples.edges(1, 3));
        }
        stranger = DriverManager.getConnection("jdbc:sqlite:" + file());
    }

    @AfterEach
    void close() throws Exception {
        stranger.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE entries SET body = '{}' WHERE entry = 2",
                "UPDATE OR REPLACE entries SET entry = 1 WHERE entry = 2",
                "UPDATE entries SET entry = 9 WHERE entry = 3"
            })
    void refusesToChangeAnEntry(String sql) throws Exception {
        assertRefused(sql, "an entry is never changed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"DELETE FROM entries", "DELETE FROM entries WHERE entry = 3"})
    void refusesToRemoveAnEntry(String sql) throws Exception {
        assertRefused(sql, "an entry is never removed");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "INSERT INTO entries " + VALUES,
                "INSERT OR REPLACE INTO entries " + VALUES,
                "REPLACE INTO entries " + VALUES,
                "INSERT OR IGNORE INTO entries " + VALUES,
                "INSERT INTO entries " + VALUES + " ON CONFLICT (entry) DO UPDATE SET body = '{}'"
            })
    void refusesToPutAnEntryInAnothersPlace(String sql) throws Exception {
        assertRefused(sql, "an entry is never replaced");
    }

    @ParameterizedTest
    @ValueSource(strings = {"on", "off"})
    void refusesReplacementWhateverRecursiveTriggersSay(String recursive) throws Exception {
        try (Statement statement = stranger.createStatement()) {
            statement.execute("PRAGMA recursive_triggers = " + recursive);
        }
        assertRefused("INSERT OR REPLACE INTO entries " + VALUES, "an entry is never replaced");
    }

    @Test
    void refusesValuesOfAnotherType() {
        assertThatThrownBy(
                        () ->
                                execute(
                                        "INSERT INTO entries VALUES (4, 'edge', 'noon', '{}',"
                                                + " zeroblob(32), zeroblob(32))"))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("cannot store TEXT value in INTEGER column");
    }

    private void assertRefused(String sql, String why) throws Exception {
        assertThatThrownBy(() -> execute(sql))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining(why);
        List<Entry> found = new ArrayList<>();
        try (JournalReader reader = JournalReader.open(file())) {
            reader.entries(found::add);
        }
        assertThat(found).isEqualTo(Samples.edges(1, 3));
    }

    private void execute(String sql) throws SQLException {
        try (Statement statement = stranger.createStatement()) {
            statement.execute(sql);
        }
    }

    private Path file() {
        return directory.resolve(JournalFile.NAME);
    }
}
