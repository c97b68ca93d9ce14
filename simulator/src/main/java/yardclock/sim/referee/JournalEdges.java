package yardclock.sim.referee;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.sim.units.UnitCounts;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** Which edges a journal holds, as its printed lines say: one JSON object an entry. */
public final class JournalEdges {
    private final Map<String, BitSet> held = new HashMap<>();
    private long edges;

    private JournalEdges() {}

    /** Reads the output of {@code journal FILE --as ndjson} to its end. */
    public static JournalEdges read(BufferedReader lines) throws IOException {
        JournalEdges found = new JournalEdges();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.contains("\"edge\"")) {
                found.take(Json.mapper().readTree(line));
            }
        }
        return found;
    }

    private void take(JsonNode entry) {
        if (!entry.path("kind").asText().equals("edge")) {
            return;
        }
        BitSet seqs =
                held.computeIfAbsent(
                        key(entry.path("unit").asText(), entry.path("boot").asText()),
                        any -> new BitSet());
        int seq = Math.toIntExact(entry.path("seq").asLong());
        if (!seqs.get(seq)) {
            seqs.set(seq);
            edges++;
        }
    }

    private static String key(String unit, String boot) {
        return unit + " " + boot;
    }

    /** Distinct edges, by unit, boot and sequence number. */
    public long distinct() {
        return edges;
    }

    public boolean holds(String unit, String boot, int seq) {
        return held.getOrDefault(key(unit, boot), new BitSet()).get(seq);
    }

    /** How many of the edges a unit stamped are not here. */
    public long missingOf(UnitCounts unit) {
        BitSet seqs = held.getOrDefault(key(unit.unit(), unit.boot()), new BitSet());
        return unit.edges() - seqs.get(0, Math.toIntExact(unit.edges())).cardinality();
    }
}
