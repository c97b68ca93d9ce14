package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.EdgeRule;
import yardclock.core.course.Guards;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Site;
import yardclock.core.course.Text;
import yardclock.core.course.Trigger;
import yardclock.core.time.Stamp;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A readable history of edges with the trigger they are for and the marks a person expects.
 *
 * <p>One statement a line, {@code name: value}; {@code #} begins a comment. All times are seconds.
 *
 * <pre>
 * trigger: single a/1=1     combination, then contacts as unit/sensor=state
 * edge-rule: release        the plan's edge rule; first when left out
 * lockout: 3                any guard by its name
 * longestBlock: 30          a block longer than this was stuck
 * settle: 0.4               how long a contrary edge may be under way; 0 when left out
 * from: 20                  edges before it do not count (what armed the trigger, or the start)
 * edge: 12.000 a/1 1        time, sensor, state
 * mark: 12.000 a/1          the edge that must stamp, or none
 * concludes: 13.900         when the mark is final; optional
 * passages: 12.000 16.000   every passage; optional
 * counted: 3 12 16 18       how many are wanted, then those counted; optional
 * parts: 0.040 0.600        how long the blocks of the mark's passage lasted, open for the last one
 * struck: 12.000 min-block  each edge in no passage, and the guard that struck it; or none
 * </pre>
 */
record EdgeHistory(
        String name,
        Trigger trigger,
        long settleMicros,
        long fromMicros,
        List<TimedEdge> edges,
        Map<String, String> expected) {

    private static final List<String> EXPECTATIONS =
            List.of("mark", "concludes", "passages", "counted", "parts", "struck");

    static EdgeHistory read(Path file) {
        try {
            return new Reading(file.getFileName().toString()).read(Files.readAllLines(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static long micros(String seconds) {
        return new BigDecimal(seconds).movePointRight(6).longValueExact();
    }

    @Override
    public String toString() {
        return name;
    }

    /** One file on its way to a history. */
    private static final class Reading {
        private final String name;
        private final Map<String, String> values = new TreeMap<>();
        private final Map<String, String> expected = new TreeMap<>();
        private final List<TimedEdge> edges = new ArrayList<>();

        Reading(String name) {
            this.name = name;
        }

        EdgeHistory read(List<String> lines) {
            lines.forEach(this::line);
            if (!expected.containsKey("mark")) {
                throw new IllegalArgumentException(name + " expects no mark");
            }
            Trigger trigger = trigger();
            long settle = time("settle");
            long from = time("from");
            if (!values.isEmpty()) {
                throw new IllegalArgumentException(name + " says what nobody reads: " + values);
            }
            return new EdgeHistory(name, trigger, settle, from, List.copyOf(edges), expected);
        }

        private void line(String line) {
            String text = line.replaceAll("#.*", "").strip();
            if (text.isEmpty()) {
                return;
            }
            String[] parts = text.split(":\\s*", 2);
            if (parts[0].equals("edge")) {
                edges.add(edge(parts[1].split("\\s+")));
                return;
            }
            Map<String, String> target = EXPECTATIONS.contains(parts[0]) ? expected : values;
            if (target.put(parts[0], parts[1]) != null) {
                throw new IllegalArgumentException(name + " says twice: " + parts[0]);
            }
        }

        private TimedEdge edge(String[] words) {
            long at = micros(words[0]);
            int state = Integer.parseInt(words[2]);
            Stamp stamp = new Stamp(at, at - 1_000, at + 1_000);
            return new TimedEdge(sensor(words[1]), state, stamp, 0, "b0", edges.size(), at, at, 0);
        }

        private static SensorRef sensor(String text) {
            String[] parts = text.split("/");
            return new SensorRef(parts[0], Integer.parseInt(parts[1]));
        }

        private Trigger trigger() {
            String[] words = values.remove("trigger").split("\\s+");
            String rule = enumName(words[0]);
            List<Contact> contacts =
                    Arrays.stream(words).skip(1).map(w -> w.split("=")).map(this::contact).toList();
            String edge = values.remove("edge-rule");
            return new Trigger(
                    Combination.valueOf(rule),
                    edge == null ? null : EdgeRule.valueOf(enumName(edge)),
                    contacts,
                    guards(),
                    new Site(0, 0, List.of(), time("longestBlock"), null, 0, 0),
                    new Text("", ""),
                    0);
        }

        private static String enumName(String word) {
            return word.toUpperCase(Locale.ROOT).replace('-', '_');
        }

        private Contact contact(String[] parts) {
            return new Contact(sensor(parts[0]), Integer.parseInt(parts[1]));
        }

        private Guards guards() {
            String nth = values.remove("nth");
            String stamp = values.remove("stamp");
            return new Guards(
                    time("lockout"),
                    time("staysFor"),
                    time("clearFor"),
                    time("stoodFor"),
                    time("minBlock"),
                    time("mergeGap"),
                    time("within"),
                    nth == null ? 1 : Integer.parseInt(nth),
                    time("spacing"),
                    stamp == null ? 0 : Integer.parseInt(stamp),
                    "");
        }

        private long time(String key) {
            String text = values.remove(key);
            return text == null ? 0 : micros(text);
        }
    }
}
