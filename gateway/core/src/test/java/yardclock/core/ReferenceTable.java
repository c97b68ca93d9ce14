package yardclock.core;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Outside check values: a CSV whose first line names its source. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** One row by column name. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("no column " + column + " in " + cells);
            }
            return cell;
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** Seconds as whole microseconds; refuses to lose a digit. */
        public long micros(String column) {
            return new BigDecimal(text(column)).movePointRight(6).longValueExact();
        }

        @Override
        public String toString() {
            return cells.toString();
        }
    }

    /** The rows of {@code /reference/<name>.csv}. */
    public static List<Row> rows(String name) {
        List<String> lines = lines("/reference/" + name + ".csv");
        if (!lines.get(0).startsWith("#")) {
            throw new IllegalStateException(name + " does not name its source");
        }
        List<String> content = lines.stream().filter(line -> !line.startsWith("#")).toList();
        String[] columns = content.get(0).split(",");
        List<Row> rows = new ArrayList<>();
        for (String line : content.subList(1, content.size())) {
            String[] cells = line.split(",", columns.length);
            Map<String, String> row = new TreeMap<>();
            for (int i = 0; i < columns.length; i++) {
                row.put(columns[i], cells[i]);
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static List<String> lines(String resource) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
