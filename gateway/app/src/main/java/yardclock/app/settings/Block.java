package yardclock.app.settings;

import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

import yardclock.core.course.Text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * One mapping of the plan file, asked key by key. Each question says what is allowed there; an
 * answer that breaks it becomes a problem and a stand-in, so that the reading goes on. {@link
 * #close} then refuses every key nobody asked for.
 *
 * <p>Stand-ins are {@link #WRONG} for numbers, the empty string and the empty optional for words: a
 * plan with stand-ins never leaves the package, because there is a problem for each of them.
 */
final class Block {
    static final long WRONG = -1;

    private static final String BLOCK_FORM = "keys of its own, indented below";

    private final Findings findings;
    private final String kind;
    private final String path;
    private final int line;
    private final Map<String, NodeTuple> entries = new LinkedHashMap<>();
    private final Set<String> asked = new TreeSet<>();

    /** The file's outermost block; its kind is the word the documentation lists its keys under. */
    Block(MappingNode node, String kind, Findings findings) {
        this(node, kind, "", findings);
    }

    private Block(MappingNode node, String kind, String path, Findings findings) {
        this.findings = findings;
        this.kind = kind;
        this.path = path;
        this.line = lineOf(node);
        node.getValue().forEach(this::enter);
    }

    private Block(String kind, String path, int line, Findings findings) {
        this.findings = findings;
        this.kind = kind;
        this.path = path;
        this.line = line;
    }

    private void enter(NodeTuple entry) {
        Node key = entry.getKeyNode();
        if (!(key instanceof ScalarNode)) {
            findings.add(lineOf(key), path, "a key must be one word", "");
            return;
        }
        String name = ((ScalarNode) key).getValue();
        NodeTuple before = entries.putIfAbsent(name, entry);
        if (before != null) {
            String wrong = "this key stands on line " + lineOf(before.getKeyNode()) + " already";
            findings.add(lineOf(key), pathOf(name), wrong, "each key once");
        }
    }

    int line(String key) {
        NodeTuple entry = entries.get(key);
        return entry == null ? line : lineOf(entry.getKeyNode());
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    /** Says that the value under a key does not do. */
    void wrong(String key, String wrong, String allowed) {
        findings.add(line(key), pathOf(key), wrong, allowed);
    }

    /** A whole number that must be there. */
    long count(String key, PlanLimits limit) {
        return required(key, limit.allowed()).map(v -> v.number(limit)).orElse(WRONG);
    }

    long count(String key, PlanLimits limit, long absent) {
        return optional(key, limit.allowed()).map(v -> v.number(limit)).orElse(absent);
    }

    /** A duration in microseconds that must be there. */
    long time(String key, PlanLimits limit) {
        return required(key, limit.allowed()).map(v -> v.time(limit)).orElse(WRONG);
    }

    long time(String key, PlanLimits limit, long absent) {
        return optional(key, limit.allowed()).map(v -> v.time(limit)).orElse(absent);
    }

    boolean yesNo(String key) {
        return required(key, Value.YES_NO).map(Value::yesNo).orElse(false);
    }

    boolean yesNo(String key, boolean absent) {
        return optional(key, Value.YES_NO).map(Value::yesNo).orElse(absent);
    }

    /** A word of a closed list; empty after a problem. */
    <E extends Enum<E>> Optional<E> word(String key, Class<E> words) {
        return required(key, Value.words(words)).flatMap(v -> v.word(words));
    }

    /** A word of a closed list that may be left out. */
    <E extends Enum<E>> E word(String key, Class<E> words, E absent) {
        return optional(key, Value.words(words)).flatMap(v -> v.word(words)).orElse(absent);
    }

    /** Words of a closed list with commas between them, each once; empty when left out. */
    <E extends Enum<E>> List<E> words(String key, Class<E> words) {
        return optional(key, Value.words(words)).map(v -> v.wordsOf(words)).orElse(List.of());
    }

    /** The raw text under a key that may be left out, for forms of its own. */
    Optional<Value> maybe(String key, String allowed) {
        return optional(key, allowed);
    }

    /** Free words on one line; empty after a problem. */
    String sentence(String key, PlanLimits limit) {
        return required(key, limit.allowed()).map(v -> v.sentence(limit)).orElse("");
    }

    /** An id; empty after a problem. */
    String id(String key) {
        return required(key, Value.ID_FORM).map(Value::id).orElse("");
    }

    String id(String key, String absent) {
        return optional(key, Value.ID_FORM).map(Value::id).orElse(absent);
    }

    /** A state of a sensor, 0 or 1, or {@link #WRONG}. */
    int state(String key) {
        return required(key, Value.STATES).map(Value::state).orElse((int) WRONG);
    }

    int state(String key, int absent) {
        return optional(key, Value.STATES).map(Value::state).orElse(absent);
    }

    /** The raw text under a key, for forms of its own; empty after a problem. */
    Optional<Value> value(String key, String allowed) {
        return required(key, allowed);
    }

    /** The same words in both languages. */
    Text text(String key, PlanLimits limit) {
        Block block = block(key, "text", "en and es, each " + limit.allowed());
        Text text = new Text(block.sentence("en", limit), block.sentence("es", limit));
        block.close();
        return text;
    }

    /** A block that must be there; after a problem an empty one that complains no further. */
    Block block(String key, String kindInside) {
        return block(key, kindInside, BLOCK_FORM);
    }

    private Block block(String key, String kindInside, String allowed) {
        ask(key, allowed);
        NodeTuple entry = entries.get(key);
        if (entry != null && entry.getValueNode() instanceof MappingNode) {
            MappingNode inside = (MappingNode) entry.getValueNode();
            return new Block(inside, kindInside, pathOf(key), findings);
        }
        if (entry == null) {
            missing(key, allowed);
        } else {
            wrong(key, "a block of keys must stand here", allowed);
        }
        return new Block(kindInside, pathOf(key), line, findings.silenced());
    }

    /** A list of blocks. Absent is the empty list where that is within the limit. */
    List<Block> blocks(String key, String kindInside, PlanLimits limit) {
        ask(key, limit.allowed());
        NodeTuple entry = entries.get(key);
        if (entry == null) {
            if (limit.min() > 0) {
                missing(key, limit.allowed());
            }
            return List.of();
        }
        if (!(entry.getValueNode() instanceof SequenceNode)) {
            wrong(key, "a list must stand here", limit.allowed());
            return List.of();
        }
        List<Node> nodes = ((SequenceNode) entry.getValueNode()).getValue();
        if (!limit.admits(nodes.size())) {
            wrong(key, "this list has " + nodes.size() + " entries", allowed(limit));
        }
        return blocks(key, kindInside, nodes);
    }

    private List<Block> blocks(String key, String kindInside, List<Node> nodes) {
        List<Block> blocks = new ArrayList<>();
        for (Node node : nodes) {
            String place = pathOf(key) + "[" + nameOf(node, blocks.size() + 1) + "]";
            if (node instanceof MappingNode) {
                blocks.add(new Block((MappingNode) node, kindInside, place, findings));
            } else {
                findings.add(lineOf(node), place, "a block of keys must stand here", "");
            }
        }
        return blocks;
    }

    /** Entries are called by their id or number where they have one, else counted from 1. */
    private static String nameOf(Node node, int position) {
        if (node instanceof MappingNode) {
            for (NodeTuple entry : ((MappingNode) node).getValue()) {
                String key = scalar(entry.getKeyNode());
                String value = scalar(entry.getValueNode());
                if ((key.equals("id") || key.equals("number")) && Value.isId(value)) {
                    return value;
                }
            }
        }
        return Integer.toString(position);
    }

    /** Refuses every key nobody asked for: a misspelt rule must not be a rule left out. */
    void close() {
        for (Map.Entry<String, NodeTuple> entry : entries.entrySet()) {
            if (!asked.contains(entry.getKey())) {
                String allowed = String.join(", ", asked);
                String wrong = "there is no such key here" + hint(entry.getKey());
                int at = lineOf(entry.getValue().getKeyNode());
                findings.add(at, pathOf(entry.getKey()), wrong, allowed);
            }
        }
    }

    private static String hint(String key) {
        boolean isCutOff = key.toLowerCase(Locale.ROOT).contains("cutoff");
        return isCutOff ? "; one cut-off, timing.cutOff, holds for everyone" : "";
    }

    private Optional<Value> required(String key, String allowed) {
        Optional<Value> value = optional(key, allowed);
        if (!has(key)) {
            missing(key, allowed);
        }
        return value;
    }

    private Optional<Value> optional(String key, String allowed) {
        ask(key, allowed);
        NodeTuple entry = entries.get(key);
        if (entry == null) {
            return Optional.empty();
        }
        String text = scalar(entry.getValueNode());
        if (text.isEmpty()) {
            wrong(key, "one value must stand here", allowed);
            return Optional.empty();
        }
        return Optional.of(new Value(this, key, text));
    }

    private void missing(String key, String allowed) {
        findings.add(line, pathOf(key), "this is missing", allowed);
    }

    private void ask(String key, String allowed) {
        asked.add(key);
        findings.knows(kind, key, allowed);
    }

    static String allowed(PlanLimits limit) {
        return limit.allowed() + " (" + limit.reason() + ")";
    }

    private static String scalar(Node node) {
        return node instanceof ScalarNode ? ((ScalarNode) node).getValue().strip() : "";
    }

    private static int lineOf(Node node) {
        return node.getStartMark().getLine() + 1;
    }
}
