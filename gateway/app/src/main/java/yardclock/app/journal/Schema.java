package yardclock.app.journal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The table, its three guards, and the steps that bring an older file up to date. A file's version
 * is {@code PRAGMA user_version}: the number of steps it has seen.
 */
final class Schema {
    private static final List<List<String>> STEPS =
            List.of(
                    List.of(
                            """
                            CREATE TABLE entries (
                              entry INTEGER PRIMARY KEY CHECK (entry >= 1),
                              kind TEXT NOT NULL,
                              gateway_micros INTEGER NOT NULL,
                              body TEXT NOT NULL,
                              previous BLOB NOT NULL CHECK (length(previous) = 32),
                              hash BLOB NOT NULL CHECK (length(hash) = 32)
                            ) STRICT
                            """,
                            """
                            CREATE TRIGGER entries_are_never_changed BEFORE UPDATE ON entries
                            BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END
                            """,
                            """
                            CREATE TRIGGER entries_are_never_removed BEFORE DELETE ON entries
                            BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END
                            """,
                            // INSERT OR REPLACE removes the old row without asking the DELETE
                            // trigger, unless
                            // recursive_triggers is on in that very connection: so the insertion
                            // itself is refused.
                            """
                            CREATE TRIGGER entries_are_never_replaced BEFORE INSERT ON entries
                            WHEN EXISTS (SELECT 1 FROM entries WHERE entry = NEW.entry)
                            BEGIN SELECT RAISE(ABORT, 'an entry is never replaced'); END
                            """));

    private Schema() {}

    static int newest() {
        return STEPS.size();
    }

    /** Runs the steps the file has not seen, all in one transaction. */
    static void migrate(Connection connection) throws SQLException, JournalRefusedException {
        int version = version(connection);
        refuseNewer(version);
        if (version == newest()) {
            return;
        }
        connection.setAutoCommit(false);
        try (Statement statement = connection.createStatement()) {
            for (List<String> step : STEPS.subList(version, newest())) {
                for (String sql : step) {
                    statement.execute(sql);
                }
            }
            statement.execute("PRAGMA user_version = " + newest());
            connection.commit();
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** Refuses a file that this version of the gateway could misread. */
    static void check(Connection connection) throws SQLException, JournalRefusedException {
        int version = version(connection);
        refuseNewer(version);
        if (version < 1) {
            throw new JournalRefusedException("This file is not a Yardclock journal.");
        }
    }

    private static void refuseNewer(int version) throws JournalRefusedException {
        if (version > newest()) {
            throw new JournalRefusedException(
                    "This journal was written by a newer Yardclock (its format is "
                            + version
                            + ", this one knows up to "
                            + newest()
                            + "). Use that one.");
        }
    }

    private static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA user_version")) {
            return result.getInt(1);
        }
    }
}
