package yardclock.app.records.dossier;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.passage.EdgeKey;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Numbers a unit's edges anew without holes, in their order, where other people's were left out.
 *
 * <p>The rules wait for what a unit announced and did not hand over yet. Without this they would
 * wait for ever for edges that are no part of a dossier; with it they wait for the kept ones, as on
 * the day. For the same reason a unit's own word of its sensors' states is not heard: whoever else
 * stood on a mat is no part of a dossier either, and the mat would seem to be stuck. Immutable.
 */
final class Numbering {
    private static final int UNKNOWN = -1;

    private final Map<String, NavigableSet<Long>> kept = new TreeMap<>();

    private final boolean isOfFirstVersion;

    /**
     * @param isOfFirstVersion these heard what units say of their sensors
     */
    Numbering(List<Entry> entries, boolean isOfFirstVersion) {
        this.isOfFirstVersion = isOfFirstVersion;
        for (Entry entry : entries) {
            if (entry.input() instanceof Input.Edge edge) {
                kept.computeIfAbsent(boot(edge.unit(), edge.boot()), b -> new TreeSet<>())
                        .add(edge.seq());
            }
        }
    }

    boolean isOfFirstVersion() {
        return isOfFirstVersion;
    }

    private static String boot(String unit, String boot) {
        return unit + "/" + boot;
    }

    Input renumbered(Input input) {
        return switch (input.kind()) {
            case EDGE -> edge((Input.Edge) input);
            case HEALTH -> health((Input.Health) input);
            case RULING -> ruling((Input.Ruling) input);
            default -> input;
        };
    }

    private Input edge(Input.Edge e) {
        long seq = below(e.unit(), e.boot(), e.seq());
        return new Input.Edge(e.unit(), e.boot(), seq, e.sensor(), e.state(), e.tick());
    }

    private Input health(Input.Health h) {
        return new Input.Health(
                h.unit(),
                h.boot(),
                h.tick(),
                below(h.unit(), h.boot(), h.nextSeq()),
                h.batteryMillivolts(),
                h.rssiDbm(),
                h.bufferFill(),
                h.lowestFreeMemory(),
                h.firmware(),
                h.contract(),
                statesOf(h),
                h.accessPoint());
    }

    private Input ruling(Input.Ruling r) {
        return new Input.Ruling(
                r.key(),
                r.device(),
                r.boot(),
                r.deviceMicros(),
                r.receivedMicros(),
                r.basis(),
                r.supersedes(),
                r.shownMicros(),
                Acts.renumbered(r.act(), this::of));
    }

    private List<Integer> statesOf(Input.Health h) {
        return isOfFirstVersion
                ? h.sensorStates()
                : Collections.nCopies(h.sensorStates().size(), UNKNOWN);
    }

    private EdgeKey of(EdgeKey key) {
        return new EdgeKey(key.unit(), key.boot(), below(key.unit(), key.boot(), key.seq()));
    }

    private long below(String unit, String boot, long seq) {
        NavigableSet<Long> known = kept.get(boot(unit, boot));
        return known == null ? 0 : known.headSet(seq, false).size();
    }
}
