package yardclock.app.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** Reads rows in order and checks the chain on the way, one row in memory at a time. */
final class Rows {
    private static final String IN_ORDER =
            "SELECT entry, kind, gateway_micros, body, previous, hash FROM entries"
                    + " WHERE entry <= ? ORDER BY entry";

    /** What to do with a row once it has proved to be sound. */
    @FunctionalInterface
    interface Visitor {
        void visit(Row row) throws JournalRefusedException;
    }

    private Rows() {}

    /**
     * Visits every row up to {@code upTo}; {@code chain} must be new and stands at the last row
     * afterwards.
     *
     * @return the number of the last row, 0 when there is none
     * @throws JournalRefusedException naming the first entry that is missing, changed or unreadable
     */
    static long visit(Connection connection, Chain chain, long upTo, Visitor visitor)
            throws JournalRefusedException {
        long last = 0;
        try (PreparedStatement select = connection.prepareStatement(IN_ORDER)) {
            select.setLong(1, upTo);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    Row row = row(rows);
                    if (row.entry() != last + 1) {
                        throw broken(last + 1, "it is missing");
                    }
                    if (!chain.follows(row)) {
                        throw broken(row.entry(), "it was changed, or the one before it was");
                    }
                    visitor.visit(row);
                    last = row.entry();
                }
            }
            return last;
        } catch (SQLException e) {
            throw new JournalRefusedException(
                    "The journal can't be read after entry " + last + ": " + e.getMessage(), e);
        }
    }

    private static Row row(ResultSet from) throws SQLException {
        return new Row(
                from.getLong(1),
                from.getString(2),
                from.getLong(3),
                from.getString(4),
                from.getBytes(5),
                from.getBytes(6));
    }

    private static JournalRefusedException broken(long entry, String why) {
        return new JournalRefusedException(
                "The journal's chain is broken: the first broken entry is "
                        + entry
                        + " ("
                        + why
                        + "). Nothing from there on can be trusted.");
    }
}
