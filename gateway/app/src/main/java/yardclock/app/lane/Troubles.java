package yardclock.app.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Standing sentences everyone must know: the disk is full, the broker is gone. Every frame carries
 * them. One sentence a source; raising again replaces it. Safe from any thread.
 */
public final class Troubles {
    private final TreeMap<String, String> bySource = new TreeMap<>();

    /**
     * @param source who speaks, as {@code broker} or {@code journal}; it orders the sentences
     * @param words one plain sentence for people
     */
    public synchronized void raise(String source, String words) {
        bySource.put(source, words);
    }

    public synchronized void clear(String source) {
        bySource.remove(source);
    }

    public synchronized List<String> words() {
        return List.copyOf(new ArrayList<>(bySource.values()));
    }

    /** The sentence of one source, or {@code ok}. */
    public synchronized String of(String source) {
        return bySource.getOrDefault(source, "ok");
    }
}
