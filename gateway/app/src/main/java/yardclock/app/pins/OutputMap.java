package yardclock.app.pins;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which line of this board drives what.
 *
 * <p>Written {@code pulse=5,run=6,release=13,heat=19,quiet=26}: jobs with the GPIO line numbers as
 * the board's maker counts them. The pulse must be there: lamps that nothing takes the power from
 * when the gateway dies would go on saying what was.
 */
public record OutputMap(Map<OutputJob, Integer> lineOfJob) {
    private static final Pattern PAIR = Pattern.compile("([a-z]+)=(\\d{1,2})");

    public OutputMap {
        lineOfJob = Map.copyOf(lineOfJob);
    }

    /**
     * @throws IllegalArgumentException with a sentence that names what is wrong
     */
    public static OutputMap parse(String text) {
        Map<OutputJob, Integer> lines = new EnumMap<>(OutputJob.class);
        for (String pair : text.split(",", -1)) {
            Matcher parts = PAIR.matcher(pair);
            OutputJob job = parts.matches() ? job(parts.group(1)) : null;
            if (job == null) {
                throw refused(text, "written like pulse=5,run=6,release=13,heat=19,quiet=26");
            }
            int line = Integer.parseInt(parts.group(2));
            if (!PinMap.isLine(line)) {
                throw refused(text, "lines are " + PinMap.LINES);
            }
            if (lines.put(job, line) != null) {
                throw refused(text, job.word() + " stands twice");
            }
        }
        if (!lines.containsKey(OutputJob.PULSE)) {
            throw refused(
                    text, "without a pulse nothing takes the power away when this board dies");
        }
        if (new TreeSet<>(lines.values()).size() < lines.size()) {
            throw refused(text, "two outputs are on one line");
        }
        return new OutputMap(lines);
    }

    private static OutputJob job(String word) {
        for (OutputJob job : OutputJob.values()) {
            if (job.word().equals(word)) {
                return job;
            }
        }
        return null;
    }

    private static IllegalArgumentException refused(String text, String rule) {
        return new IllegalArgumentException("outputs \"" + text + "\" are not understood: " + rule);
    }

    /**
     * @throws IllegalArgumentException when one of these lines drives something
     */
    void requireFree(Collection<Integer> lines, String whose) {
        for (int line : lines) {
            if (lineOfJob.containsValue(line)) {
                throw new IllegalArgumentException(
                        "line " + line + " is both an output and " + whose);
            }
        }
    }
}
