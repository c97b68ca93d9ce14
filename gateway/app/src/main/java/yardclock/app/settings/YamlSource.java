package yardclock.app.settings;

import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;

import java.io.StringReader;
import java.util.Optional;

/**
 * Turns YAML text into nodes that know their lines. Only the plain part of YAML is let in: no
 * aliases (a few lines of them can stand for gigabytes), no tags, one document, no great depth.
 * Everything is judged on the stream of parsing steps, before anything is built.
 */
final class YamlSource {
    private static final String PLAIN = "plain keys, lists and values";

    private final Findings findings;

    YamlSource(Findings findings) {
        this.findings = findings;
    }

    /** The file's outermost mapping, or a problem. */
    Optional<MappingNode> root(String text) {
        Yaml yaml = new Yaml(options());
        try {
            if (!isPlain(yaml, text)) {
                return Optional.empty();
            }
            Node root = yaml.compose(new StringReader(text));
            if (root instanceof MappingNode) {
                return Optional.of((MappingNode) root);
            }
            int line = root == null ? 1 : line(root.getStartMark());
            findings.add(
                    line, "", "this is no exam plan", "keys with values, the first one: format: 1");
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
            findings.add(line(mark), "", "not readable as YAML: " + e.getProblem(), "");
        } catch (YAMLException e) {
            findings.add(0, "", "not readable as YAML: " + oneLine(e.getMessage()), "");
        }
        return Optional.empty();
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit((int) PlanLimits.FILE_BYTES.max());
        options.setNestingDepthLimit((int) PlanLimits.DEPTH.max() + 1);
        options.setMaxAliasesForCollections(0);
        return options;
    }

    private boolean isPlain(Yaml yaml, String text) {
        long depth = 0;
        int documents = 0;
        for (Event step : yaml.parse(new StringReader(text))) {
            documents += step instanceof DocumentStartEvent ? 1 : 0;
            depth += step instanceof CollectionStartEvent ? 1 : 0;
            depth -= step instanceof CollectionEndEvent ? 1 : 0;
            String wrong = wrong(step, depth, documents);
            if (!wrong.isEmpty()) {
                findings.add(line(step.getStartMark()), "", wrong, PLAIN);
                return false;
            }
        }
        return true;
    }

    private static String wrong(Event step, long depth, int documents) {
        if (step instanceof AliasEvent) {
            return "aliases (*name) are not read here; write the values out";
        }
        if (hasTag(step)) {
            return "tags (!name) are not read here";
        }
        if (documents > 1) {
            return "a second document begins here; a plan is one document";
        }
        return depth > PlanLimits.DEPTH.max() ? "too many levels inside each other" : "";
    }

    private static boolean hasTag(Event step) {
        return (step instanceof ScalarEvent && ((ScalarEvent) step).getTag() != null)
                || (step instanceof CollectionStartEvent
                        && ((CollectionStartEvent) step).getTag() != null);
    }

    private static int line(Mark mark) {
        return mark == null ? 0 : mark.getLine() + 1;
    }

    private static String oneLine(String message) {
        return message == null ? "unknown" : message.replaceAll("\\s+", " ").strip();
    }
}
