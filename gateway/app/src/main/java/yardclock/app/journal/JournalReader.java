package yardclock.app.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;

import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;

import yardclock.app.json.Json;
import yardclock.core.engine.Entry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * A journal opened to read only, beside a running gateway or long after the day. Owned by one
 * thread. Every reading checks the chain.
 *
 * <p>After a crash the newest entries may stand in the file that ends in {@code -wal}: keep the two
 * together when you copy a journal.
 */
public final class JournalReader implements AutoCloseable {
    private final Connection connection;

    private final int format;

    private JournalReader(Connection connection, int format) {
        this.connection = connection;
        this.format = format;
    }

    /** Opens a journal file without changing anything in it or beside it. */
    public static JournalReader open(Path file) throws JournalRefusedException {
        if (!Files.isRegularFile(file)) {
            throw new JournalRefusedException("There is no journal at " + file + ".");
        }
        Connection connection = null;
        try {
            connection = JDBC.createConnection(address(file), readOnly());
            return new JournalReader(connection, Schema.check(connection));
        } catch (SQLException e) {
            Connections.closeQuietly(connection);
            throw new JournalRefusedException(
                    file + " can't be opened as a journal: " + e.getMessage(), e);
        } catch (JournalRefusedException e) {
            Connections.closeQuietly(connection);
            throw e;
        }
    }

    // Without a -wal file nobody has the journal open, and SQLite would leave one behind merely for
    // reading; "immutable" reads the file alone and works on a read-only disk too.
    private static String address(Path file) {
        Path wal = file.resolveSibling(file.getFileName() + "-wal");
        String uri = JDBC.PREFIX + file.toAbsolutePath().toUri().toString().replace("///", "/");
        return Files.exists(wal) ? uri + "?mode=ro" : uri + "?mode=ro&immutable=1";
    }

    private static Properties readOnly() {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(Connections.BUSY_MILLIS);
        return config.toProperties();
    }

    /** Hands out every entry in order and returns how many there were. */
    public long entries(Consumer<Entry> each) throws JournalRefusedException {
        return entries(Long.MAX_VALUE, each);
    }

    long entries(long upTo, Consumer<Entry> each) throws JournalRefusedException {
        return Rows.visit(
                connection, new Chain(format), upTo, row -> each.accept(Bodies.read(row)));
    }

    /**
     * Writes down a part of the journal with the proof that it is part of it, up to the newest
     * entry.
     *
     * @throws JournalRefusedException also when the journal's format allows no proof in part
     */
    public Excerpt excerpt(Predicate<Entry> kept) throws JournalRefusedException {
        if (format < Excerpt.FORMAT) {
            throw new JournalRefusedException(
                    "This journal was begun by an earlier Yardclock. Its chain can't be shown in"
                            + " part, only whole.");
        }
        ExcerptWriter writer = new ExcerptWriter();
        Rows.visit(
                connection,
                new Chain(format),
                Long.MAX_VALUE,
                row -> writer.add(row, kept.test(Bodies.read(row))));
        return writer.excerpt();
    }

    /**
     * Hands out every entry as one line of JSON: {@code entry}, {@code kind}, {@code
     * gatewayMicros}, then the input's own fields.
     */
    public long lines(Consumer<String> each) throws JournalRefusedException {
        return Rows.visit(
                connection, new Chain(format), Long.MAX_VALUE, row -> each.accept(line(row)));
    }

    private static String line(Row row) throws JournalRefusedException {
        ObjectNode line = Json.mapper().createObjectNode();
        line.put("entry", row.entry());
        line.put("kind", row.kind());
        line.put("gatewayMicros", row.gatewayMicros());
        line.setAll(Bodies.fields(row));
        return line.toString();
    }

    @Override
    public void close() {
        Connections.closeQuietly(connection);
    }
}
