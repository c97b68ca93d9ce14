package yardclock.app.journal;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.lane.Journal;
import yardclock.core.engine.Entry;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * The journal opened to write: the one writer on its data directory. Owned by one thread at a time.
 *
 * <p>A batch is kept whole or not at all. After a failure the file is read again before the next
 * batch, so that the number and hash of the last row are the file's and not a guess.
 */
public final class JournalFile implements Journal, AutoCloseable {
    /** The journal's name in the data directory. */
    public static final String NAME = "journal.db";

    private static final Logger LOG = LoggerFactory.getLogger(JournalFile.class);
    private static final String INSERT =
            "INSERT INTO entries (entry, kind, gateway_micros, body, previous, hash)"
                    + " VALUES (?, ?, ?, ?, ?, ?)";

    private final Path file;
    private final DirectoryLock lock;
    private final Connection connection;
    private final Chain chain;
    private long lastEntry;
    private boolean doubtful;
    private boolean failing;

    private JournalFile(Path file, DirectoryLock lock, Connection connection, int format) {
        this.file = file;
        this.lock = lock;
        this.connection = connection;
        this.chain = new Chain(format);
    }

    /**
     * Opens or creates the journal in a directory, checks its whole chain, and hands out every
     * entry on the way.
     *
     * @throws JournalRefusedException when another gateway holds the directory, or when the file is
     *     damaged, foreign or newer than this version
     */
    public static JournalFile open(Path directory, Consumer<Entry> each)
            throws JournalRefusedException {
        DirectoryLock lock = DirectoryLock.take(directory);
        Path file = directory.resolve(NAME);
        Connection connection = null;
        boolean opened = false;
        try {
            connection = Connections.writer(file);
            int format = Schema.make(connection);
            JournalFile journal = new JournalFile(file, lock, connection, format);
            journal.readAll(each);
            opened = true;
            return journal;
        } catch (SQLException e) {
            throw new JournalRefusedException(
                    "The journal " + file + " can't be opened. " + Connections.sentence(e), e);
        } finally {
            if (!opened) {
                Connections.closeQuietly(connection);
                release(lock);
            }
        }
    }

    private void readAll(Consumer<Entry> each) throws JournalRefusedException {
        lastEntry =
                Rows.visit(connection, chain, Long.MAX_VALUE, row -> each.accept(Bodies.read(row)));
    }

    /** The number of the newest entry, 0 while there is none. */
    public long lastEntry() {
        return lastEntry;
    }

    @Override
    public Appended append(List<Entry> batch) {
        requireNext(batch);
        byte[] before = chain.last();
        try {
            if (doubtful && !isAsRemembered()) {
                return Appended.lost(
                        "The journal holds entries that were reported as not kept: restart the"
                                + " gateway.");
            }
            doubtful = false;
            execute("BEGIN IMMEDIATE");
            insert(batch);
            execute("COMMIT");
            lastEntry += batch.size();
            noteKept();
            return Appended.kept();
        } catch (SQLException e) {
            noteLost(e);
            doubtful = true;
            chain.continueFrom(before);
            rollBack();
            return Appended.lost(Connections.sentence(e));
        }
    }

    private void requireNext(List<Entry> batch) {
        long expected = lastEntry;
        for (Entry entry : batch) {
            if (entry.number() != ++expected) {
                throw new IllegalArgumentException(
                        "entry " + entry.number() + " offered where " + expected + " is next");
            }
        }
    }

    private void insert(List<Entry> batch) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
            for (Entry entry : batch) {
                set(insert, link(entry));
                insert.executeUpdate();
            }
        }
    }

    private Row link(Entry entry) {
        return chain.link(
                entry.number(),
                entry.input().kind().word(),
                entry.gatewayMicros(),
                Bodies.write(entry.input()));
    }

    private static void set(PreparedStatement insert, Row row) throws SQLException {
        insert.setLong(1, row.entry());
        insert.setString(2, row.kind());
        insert.setLong(3, row.gatewayMicros());
        insert.setString(4, row.body());
        insert.setBytes(5, row.previous());
        insert.setBytes(6, row.hash());
    }

    private boolean isAsRemembered() throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet last =
                        statement.executeQuery(
                                "SELECT entry, hash FROM entries ORDER BY entry DESC LIMIT 1")) {
            if (!last.next()) {
                return lastEntry == 0;
            }
            return last.getLong(1) == lastEntry && Arrays.equals(last.getBytes(2), chain.last());
        }
    }

    /** The writer's own connection, so that a test can make the disk full for it alone. */
    Connection connection() {
        return connection;
    }

    // While the disk stays full, every batch fails: one line says so, and one that it is over.
    private void noteLost(SQLException e) {
        if (!failing) {
            LOG.error("Batches are not kept from here on: {}", e.getMessage());
        }
        failing = true;
    }

    private void noteKept() {
        if (failing) {
            LOG.info("Batches are kept again from entry {} on", lastEntry);
        }
        failing = false;
    }

    // Transactions are spelled out: the driver's own commit() begins the next one at once, and a
    // failure of that would look like a failure of the commit.
    private void execute(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private void rollBack() {
        try {
            execute("ROLLBACK");
        } catch (SQLException e) {
            // After a full disk SQLite has taken the batch back by itself.
            LOG.debug("Nothing to take back: {}", e.getMessage());
        }
    }

    @Override
    public void replay(long upTo, Consumer<Entry> each) {
        try (JournalReader reader = JournalReader.open(file)) {
            reader.entries(upTo, each);
        } catch (JournalRefusedException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    @Override
    public void close() {
        Connections.closeQuietly(connection);
        release(lock);
    }

    private static void release(DirectoryLock lock) {
        try {
            lock.close();
        } catch (IOException e) {
            LOG.warn("The lock did not close cleanly: {}", e.getMessage());
        }
    }
}
