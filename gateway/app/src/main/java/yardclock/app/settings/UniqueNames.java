package yardclock.app.settings;

import java.util.LinkedHashMap;
import java.util.Map;

/** Sees to it that ids and numbers stand once in their list, and names both lines if not. */
final class UniqueNames {
    private final Map<String, Integer> lines = new LinkedHashMap<>();

    void add(Block block, String key, String name) {
        if (name.isEmpty()) {
            return;
        }
        Integer before = lines.putIfAbsent(name, block.line(key));
        if (before != null) {
            String wrong = "\"" + name + "\" stands on line " + before + " already";
            block.wrong(key, wrong, "each " + key + " once in its list");
        }
    }
}
