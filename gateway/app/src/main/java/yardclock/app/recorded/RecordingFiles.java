package yardclock.app.recorded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the two files of a recording: a header line that names the columns, then whole numbers.
 * Lines that begin with {@code #} are skipped, columns that are not asked for are passed over.
 */
public final class RecordingFiles {
    /** A day of 32 stations with an exchange in five seconds is 550,000 lines. */
    private static final long LINES_MAX = 2_000_000;

    private RecordingFiles() {}

    /** Why a file can't be used, with its line. */
    public static final class UnreadableException extends Exception {
        private static final long serialVersionUID = 1;

        UnreadableException(Path file, long line, String why) {
            super(file + (line > 0 ? ", line " + line : "") + ": " + why);
        }
    }

    public static Recording read(Path exchanges, Path edges) throws UnreadableException {
        List<Recording.ExchangeRow> exchangeRows = new ArrayList<>();
        rows(
                exchanges,
                List.of(
                        "gateway_sent_us",
                        "station_received_us",
                        "station_sent_us",
                        "gateway_received_us"),
                (station, n) ->
                        exchangeRows.add(
                                new Recording.ExchangeRow(station, n[0], n[1], n[2], n[3])));
        List<Recording.EdgeRow> edgeRows = new ArrayList<>();
        rows(
                edges,
                List.of("station_us", "gateway_arrival_us"),
                (station, n) -> edgeRows.add(new Recording.EdgeRow(station, n[0], n[1])));
        return new Recording(exchangeRows, edgeRows);
    }

    private interface RowTaker {
        void take(String station, long[] figures);
    }

    private static void rows(Path file, List<String> columns, RowTaker taker)
            throws UnreadableException {
        List<String> header = null;
        long number = 0;
        for (String line : lines(file)) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = List.of(line.strip().split(",", -1));
            if (header == null) {
                header = cells;
                check(file, number, header, columns);
                continue;
            }
            if (cells.size() != header.size()) {
                String why = cells.size() + " cells where the header has " + header.size();
                throw new UnreadableException(file, number, why);
            }
            taker.take(
                    cells.get(header.indexOf("station")),
                    figures(file, number, header, columns, cells));
        }
        if (header == null) {
            throw new UnreadableException(file, 0, "it has no header line");
        }
    }

    private static void check(Path file, long number, List<String> header, List<String> columns)
            throws UnreadableException {
        for (String column : columns) {
            if (!header.contains(column)) {
                throw new UnreadableException(file, number, "there is no column " + column);
            }
        }
        if (!header.contains("station")) {
            throw new UnreadableException(file, number, "there is no column station");
        }
    }

    private static long[] figures(
            Path file, long number, List<String> header, List<String> columns, List<String> cells)
            throws UnreadableException {
        long[] figures = new long[columns.size()];
        for (int i = 0; i < figures.length; i++) {
            String cell = cells.get(header.indexOf(columns.get(i))).strip();
            try {
                figures[i] = Long.parseLong(cell);
            } catch (NumberFormatException e) {
                String why = columns.get(i) + " must be a whole number, not '" + cell + "'";
                throw new UnreadableException(file, number, why);
            }
        }
        return figures;
    }

    private static List<String> lines(Path file) throws UnreadableException {
        try (var lines = Files.lines(file, StandardCharsets.UTF_8)) {
            List<String> all = lines.limit(LINES_MAX + 1).toList();
            if (all.size() > LINES_MAX) {
                throw new UnreadableException(file, 0, "it has over " + LINES_MAX + " lines");
            }
            return all;
        } catch (NoSuchFileException e) {
            throw new UnreadableException(file, 0, "there is no such file");
        } catch (CharacterCodingException | UncheckedIOException e) {
            throw new UnreadableException(file, 0, "it is not UTF-8 text");
        } catch (IOException e) {
            throw new UnreadableException(file, 0, "it can't be read: " + e.getMessage());
        }
    }
}
