package yardclock.core.time;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One recorded hour of four units, with the truth of each edge beside it. */
record RecordedRun(Map<String, List<long[]>> exchanges, Map<String, List<long[]>> edges) {

    static RecordedRun read(String name) throws IOException {
        return new RecordedRun(rows(name + "-exchanges.csv"), rows(name + "-events.csv"));
    }

    private static Map<String, List<long[]>> rows(String file) throws IOException {
        Map<String, List<long[]>> rows = new TreeMap<>();
        try (InputStream in = RecordedRun.class.getResourceAsStream("/reference/clock/" + file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().skip(1).map(line -> line.split(",")).forEach(cells -> add(rows, cells));
        }
        return rows;
    }

    private static void add(Map<String, List<long[]>> rows, String[] cells) {
        long[] row = new long[cells.length - 1];
        for (int i = 0; i < row.length; i++) {
            row[i] = Long.parseLong(cells[i + 1]);
        }
        rows.computeIfAbsent(cells[0], s -> new ArrayList<>()).add(row);
    }

    /** Each edge's stamp and truth, by unit. */
    Map<String, List<Judged>> judge(boolean live) {
        Map<String, List<Judged>> judged = new TreeMap<>();
        for (String unit : edges.keySet()) {
            List<long[]> rows = exchanges.get(unit);
            List<Judged> of = new ArrayList<>();
            for (long[] edge : edges.get(unit)) {
                ExchangeHistory history = new ExchangeHistory();
                for (long[] x : rows) {
                    if (!live && x[2] < edge[0] + 400_000_000L || x[3] < edge[1]) {
                        history.add(new Exchange(x[0], x[1], x[2], x[3]));
                    }
                }
                ClockEstimator estimator =
                        new ClockEstimator(history, history.size(), edge[0], edge[1]);
                ClockEstimator.Answer answer = live ? estimator.live() : estimator.settled();
                of.add(new Judged(answer.stamp(), edge[2]));
            }
            judged.put(unit, of);
        }
        return judged;
    }

    record Judged(Stamp stamp, long truth) {}
}
