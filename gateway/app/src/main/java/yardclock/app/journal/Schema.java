package yardclock.app.journal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The table and its three guards. A file's format is {@code PRAGMA user_version}; 1 and 2 differ in
 * how {@link Chain} ties rows only, so a file keeps the one it was begun in.
 */
final class Schema {
    private static final int NEWEST = 2;

    private static final List<String> TABLE =
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
                    """);

    private Schema() {}

    static int newest() {
        return NEWEST;
    }

    /** Makes the table in a new file, in one transaction; returns the file's format. */
    static int make(Connection connection) throws SQLException, JournalRefusedException {
        int format = format(connection);
        refuseNewer(format);
        if (format > 0) {
            return format;
        }
        connection.setAutoCommit(false);
        try (Statement statement = connection.createStatement()) {
            for (String sql : TABLE) {
                statement.execute(sql);
            }
            statement.execute("PRAGMA user_version = " + NEWEST);
            connection.commit();
            return NEWEST;
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** Refuses a file that this version of the gateway could misread; else returns its format. */
    static int check(Connection connection) throws SQLException, JournalRefusedException {
        int format = format(connection);
        refuseNewer(format);
        if (format < 1) {
            throw new JournalRefusedException("This file is not a Yardclock journal.");
        }
        return format;
    }

    private static void refuseNewer(int format) throws JournalRefusedException {
        if (format > newest()) {
            throw new JournalRefusedException(
                    "This journal was written by a newer Yardclock (its format is "
                            + format
                            + ", this one knows up to "
                            + newest()
                            + "). Use that one.");
        }
    }

    private static int format(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA user_version")) {
            return result.getInt(1);
        }
    }
}
