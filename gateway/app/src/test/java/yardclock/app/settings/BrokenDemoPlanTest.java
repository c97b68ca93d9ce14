package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Breaks the demo plan in every place it has, one at a time, and looks for the refusal. */
class BrokenDemoPlanTest {
    /** Keys a plan may do without; everything else must be missed when it is gone. */
    private static final Set<String> OPTIONAL =
            Set.of(
                    "checkpoints",
                    "homeContacts",
                    "count",
                    "contacts",
                    "warnings",
                    "rest",
                    "inverted",
                    "pullUp",
                    "sensors",
                    "lockout",
                    "staysFor",
                    "clearFor",
                    "stoodFor",
                    "minBlock",
                    "nth",
                    "armedBy",
                    "height",
                    "alsoTrippedBy",
                    "longestBlock",
                    "fallback",
                    "heat",
                    "startOfDay",
                    "surfaces",
                    "holdStation",
                    "indexScheme",
                    "wbgtMoreRest",
                    "wbgtHold",
                    "wbgtStop",
                    "gustAtClimbs");

    /** Keys whose values are free words or a name, so that only leaving them empty is wrong. */
    private static final Set<String> FREE = Set.of("en", "es", "department", "yard");

    private final String text = new String(DemoPlan.planBytes(), StandardCharsets.UTF_8);
    private final List<NodeTuple> entries = new ArrayList<>();

    BrokenDemoPlanTest() {
        collect(new Yaml(new LoaderOptions()).compose(new StringReader(text)));
        assertThat(entries).hasSizeGreaterThan(500);
    }

    private void collect(Node node) {
        if (node instanceof SequenceNode) {
            ((SequenceNode) node).getValue().forEach(this::collect);
        }
        if (node instanceof MappingNode) {
            for (NodeTuple entry : ((MappingNode) node).getValue()) {
                entries.add(entry);
                collect(entry.getValueNode());
            }
        }
    }

    @Test
    void aValueEmptiedOrTurnedIntoNonsenseIsRefusedAtItsLine() {
        for (NodeTuple entry : entries) {
            if (entry.getValueNode() instanceof ScalarNode) {
                assertRefusedThere(entry, FREE.contains(key(entry)) ? "\"\"" : "\"Nonsense ¿?\"");
            }
        }
    }

    @Test
    void aNumberOrTimeBeyondItsRangeIsRefusedAtItsLine() {
        int broken = 0;
        for (NodeTuple entry : entries) {
            String value = value(entry);
            boolean isNumber = value.matches("\\d+");
            if (isNumber || Durations.parse(value).isPresent()) {
                assertRefusedThere(entry, isNumber ? "999999999" : "999 h");
                broken++;
            }
        }
        assertThat(broken).isGreaterThan(100);
    }

    @Test
    void aWordTooLongIsRefusedAtItsLine() {
        for (NodeTuple entry : entries) {
            if (FREE.contains(key(entry)) && !key(entry).equals("en")) {
                assertRefusedThere(entry, "\"" + "ñ".repeat(301) + "\"");
            }
        }
    }

    @Test
    void aMisspeltKeyIsRefusedAtItsLine() {
        for (NodeTuple entry : entries) {
            Node key = entry.getKeyNode();
            PlanProblems problems = read(replaced(key, key(entry) + "x")).problems();
            assertThat(problems.list())
                    .as("key %s on line %d", key(entry), line(key))
                    .anyMatch(p -> p.line() == line(key) && p.wrong().contains("no such key"));
            if (!OPTIONAL.contains(key(entry))) {
                assertThat(problems.list())
                        .as("key %s gone from line %d", key(entry), line(key))
                        .anyMatch(p -> p.key().endsWith(key(entry)) && p.line() <= line(key));
            }
        }
    }

    @Test
    void aDamagedFileIsReadOrRefusedButNeverBreaksTheReader() {
        long seed = 7_041_776;
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            byte[] bytes = DemoPlan.planBytes();
            for (int i = 0; i <= random.nextInt(4); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            Reading<LoadedPlan> reading = ExamPlanFile.read(bytes, "damaged.yaml");
            assertThat(reading.problems().isEmpty())
                    .as("seed %d, round %d", seed, round)
                    .isEqualTo(!reading.isRefused());
        }
    }

    private void assertRefusedThere(NodeTuple entry, String with) {
        Node value = entry.getValueNode();
        PlanProblems problems = read(replaced(value, with)).problems();
        assertThat(problems.list())
                .as("%s: %s on line %d", key(entry), with, line(value))
                .anyMatch(p -> p.line() == line(value) && p.key().endsWith(key(entry)));
    }

    private String replaced(Node node, String with) {
        int from = text.offsetByCodePoints(0, node.getStartMark().getIndex());
        int to = text.offsetByCodePoints(0, node.getEndMark().getIndex());
        return text.substring(0, from) + with + text.substring(to);
    }

    private static Reading<LoadedPlan> read(String changed) {
        return ExamPlanFile.read(changed.getBytes(StandardCharsets.UTF_8), "plan.yaml");
    }

    private static String key(NodeTuple entry) {
        return ((ScalarNode) entry.getKeyNode()).getValue();
    }

    private static String value(NodeTuple entry) {
        Node node = entry.getValueNode();
        return node instanceof ScalarNode ? ((ScalarNode) node).getValue() : "";
    }

    private static int line(Node node) {
        return node.getStartMark().getLine() + 1;
    }
}
