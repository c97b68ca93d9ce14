package yardclock.app.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Collects the problems of one file while it is read, and which keys the reader knows. For one
 * reading and one thread.
 */
final class Findings {
    private static final int SHOWN_MAX = 240;

    private final String file;
    private final List<PlanProblem> list = new ArrayList<>();
    private final Map<String, String> known = new TreeMap<>();
    private int more;

    Findings(String file) {
        this.file = file;
    }

    /** Findings that nobody reads, for what lies inside something already refused. */
    Findings silenced() {
        return new Findings(file);
    }

    void add(int line, String key, String wrong, String allowed) {
        if (list.size() < PlanLimits.PROBLEMS.max()) {
            list.add(new PlanProblem(file, line, shown(key), shown(wrong), allowed));
        } else {
            more++;
        }
    }

    /** What stands in the file is repeated in a problem only on one line and in bounds. */
    private static String shown(String text) {
        int end =
                text.offsetByCodePoints(
                        0, Math.min(SHOWN_MAX, text.codePointCount(0, text.length())));
        return text.substring(0, end).replaceAll("[\\p{Cntrl}\\u2028\\u2029]", "·");
    }

    /** Notes that the reader knows a key, and what it allows there. */
    void knows(String kind, String key, String allowed) {
        known.put(kind + "." + key, allowed);
    }

    /** Every key the reader asked for so far, as kind and key, with what is allowed there. */
    Map<String, String> known() {
        return known;
    }

    String file() {
        return file;
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    PlanProblems problems() {
        return new PlanProblems(file, list, more);
    }
}
