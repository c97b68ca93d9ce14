package yardclock.app.records;

import yardclock.core.course.Station;
import yardclock.core.result.Result;
import yardclock.core.result.Result.SplitLine;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The results of the day as a table, one line an attempt, for a spreadsheet.
 *
 * <p>Comma-separated as in RFC 4180: a heading line, lines ended by CR LF, quotes where a cell
 * needs them, UTF-8. Columns: {@code number, run, group, outcome, outcome_words, official,
 * official_micros, lower_micros, upper_micros, decision, rule, credited_hold_micros, told,
 * warnings, faults}, then for each station of the plan in its order {@code ID_split,
 * ID_split_micros, ID_state}. What is unknown is an empty cell. A cell that a spreadsheet would
 * take for a formula gets an apostrophe in front.
 */
final class ResultsCsv {
    private static final List<String> FIRST_COLUMNS =
            List.of(
                    "number",
                    "run",
                    "group",
                    "outcome",
                    "outcome_words",
                    "official",
                    "official_micros",
                    "lower_micros",
                    "upper_micros",
                    "decision",
                    "rule",
                    "credited_hold_micros",
                    "told",
                    "warnings",
                    "faults");

    private ResultsCsv() {}

    static byte[] of(DaySheet day) {
        StringBuilder table = new StringBuilder();
        List<Station> stations = day.frozen().plan().stations();
        line(table, heading(stations));
        for (Result result : day.results()) {
            line(table, cells(result, stations, day));
        }
        return table.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> heading(List<Station> stations) {
        List<String> heading = new ArrayList<>(FIRST_COLUMNS);
        for (Station station : stations) {
            heading.add(station.id() + "_split");
            heading.add(station.id() + "_split_micros");
            heading.add(station.id() + "_state");
        }
        return heading;
    }

    private static List<String> cells(Result r, List<Station> stations, DaySheet day) {
        boolean timed = r.officialMicros() >= 0;
        long faults = r.calls().stream().filter(call -> call.fault()).count();
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(r.number()));
        cells.add(Integer.toString(r.run()));
        cells.add(Integer.toString(r.group()));
        cells.add(r.outcome());
        cells.add(r.outcomeWords());
        cells.add(r.display());
        cells.add(micros(r.officialMicros()));
        cells.add(timed ? micros(r.lowerMicros()) : "");
        cells.add(timed ? micros(r.upperMicros()) : "");
        cells.add(r.decision());
        cells.add(r.rule());
        cells.add(micros(r.creditedHoldMicros()));
        cells.add(r.told() ? "yes" : "no");
        cells.add(Long.toString(r.calls().size() - faults));
        cells.add(Long.toString(faults));
        stations.forEach(station -> addSplit(cells, r, station.id(), day));
        return cells;
    }

    private static void addSplit(List<String> cells, Result result, String station, DaySheet day) {
        Optional<SplitLine> split =
                result.splits().stream().filter(s -> s.station().equals(station)).findFirst();
        cells.add(split.map(s -> day.display(s.splitMicros())).orElse(""));
        cells.add(split.map(s -> micros(s.splitMicros())).orElse(""));
        cells.add(split.map(SplitLine::state).orElse(""));
    }

    private static String micros(long micros) {
        return micros < 0 ? "" : Long.toString(micros);
    }

    private static void line(StringBuilder table, List<String> cells) {
        table.append(cells.stream().map(ResultsCsv::cell).collect(Collectors.joining(",")));
        table.append("\r\n");
    }

    /** One cell's text, harmless in a spreadsheet and quoted where RFC 4180 asks for it. */
    static String cell(String text) {
        String harmless = startsFormula(text) ? "'" + text : text;
        boolean plain =
                harmless.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? harmless : '"' + harmless.replace("\"", "\"\"") + '"';
    }

    private static boolean startsFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0;
    }
}
