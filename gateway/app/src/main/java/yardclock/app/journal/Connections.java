package yardclock.app.journal;

import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** How the journal talks to SQLite: the settings of the writer, and errors as sentences. */
final class Connections {
    /** How long another program may hold the file before a write is given up. */
    static final int BUSY_MILLIS = 2_000;

    private Connections() {}

    /** A writer in WAL mode that syncs the disk at every commit. */
    static Connection writer(Path file) throws SQLException, JournalRefusedException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(BUSY_MILLIS);
        config.enableRecursiveTriggers(true);
        Connection connection =
                JDBC.createConnection(JDBC.PREFIX + file.toAbsolutePath(), config.toProperties());
        try {
            requireWal(connection);
            return connection;
        } catch (SQLException | JournalRefusedException e) {
            closeQuietly(connection);
            throw e;
        }
    }

    // Some network file systems silently stay in another mode, and then a commit is no promise.
    private static void requireWal(Connection connection)
            throws SQLException, JournalRefusedException {
        try (Statement statement = connection.createStatement();
                ResultSet mode = statement.executeQuery("PRAGMA journal_mode")) {
            if (!"wal".equalsIgnoreCase(mode.getString(1))) {
                throw new JournalRefusedException(
                        "This disk can't hold a journal safely (no write-ahead log). Choose a"
                                + " --data directory on a local disk.");
            }
        }
    }

    /** One plain sentence for every screen. */
    static String sentence(SQLException e) {
        return switch (primary(e)) {
            case SQLITE_FULL -> "The disk is full: nothing new is kept until there is room on it.";
            case SQLITE_BUSY, SQLITE_LOCKED ->
                    "Another program holds the journal: nothing new is kept until it lets go.";
            case SQLITE_READONLY ->
                    "The journal may not be written: nothing new is kept. Look at the disk.";
            default ->
                    "The disk fails: nothing new is kept. Look at it now. (" + e.getMessage() + ")";
        };
    }

    private static SQLiteErrorCode primary(SQLException e) {
        int code = e instanceof SQLiteException own ? own.getResultCode().code : e.getErrorCode();
        return SQLiteErrorCode.getErrorCode(code & 0xff);
    }

    static void closeQuietly(Connection connection) {
        if (connection == null) {
            return;
        }
        try {
            connection.close();
        } catch (SQLException e) {
            // Everything that matters was committed before; closing only tidies up.
            org.slf4j.LoggerFactory.getLogger(Connections.class)
                    .warn("The journal did not close cleanly: {}", e.getMessage());
        }
    }
}
