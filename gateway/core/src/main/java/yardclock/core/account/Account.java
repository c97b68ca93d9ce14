package yardclock.core.account;

import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Carry;

import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The causes that are written down, and the tray. Belongs to the state's thread.
 *
 * <p>Bounded: runs instead of single edges, so many boots, so many passages in the tray. An edge
 * beyond the boots' limit has no cause, and whoever counts will miss it.
 */
public final class Account {
    /** Twelve units that restart every two minutes for a long day. */
    static final int BOOTS_MAX = 8_192;

    /** More in the tray than people can look at in a day; the oldest are still accounted for. */
    static final int TRAY_MAX = 500;

    private final TreeMap<String, TreeMap<String, Runs>> boots = new TreeMap<>();
    private final TreeMap<EdgeKey, TrayEdge> tray = new TreeMap<>();
    private int bootCount;
    private long trayDropped;

    /** Writes a cause down; what is there already stays if it comes first. */
    public void note(EdgeKey key, Cause cause) {
        Runs runs = runs(key);
        if (runs != null) {
            Cause kept = Cause.first(runs.of(key.seq()), cause);
            runs.set(key.seq(), kept);
            if (kept.disposition() != Disposition.TRAY) {
                tray.remove(key);
            }
        }
    }

    public void noteAll(Collection<TimedEdge> edges, Cause cause) {
        edges.forEach(edge -> note(edge.key(), cause));
    }

    /** Puts a passage into the tray, unless its edge is known to be something else. */
    public void keep(TrayEdge passage) {
        EdgeKey key = passage.edge().key();
        note(key, passage.cause());
        boolean isNobodys = of(key).filter(c -> c.disposition() == Disposition.TRAY).isPresent();
        if (isNobodys && tray.putIfAbsent(key, passage) == null && tray.size() > TRAY_MAX) {
            tray.remove(oldest());
            trayDropped++;
        }
    }

    /** A person assigned a passage of the tray: it makes a mark now. */
    public void handOut(EdgeKey key) {
        tray.remove(key);
        set(key, Cause.MARK);
    }

    /** It makes no mark any more, and is nobody's again. */
    public void putBack(TrayEdge passage) {
        EdgeKey key = passage.edge().key();
        set(key, passage.cause());
        tray.put(key, passage);
    }

    private void set(EdgeKey key, Cause cause) {
        Runs runs = runs(key);
        if (runs != null) {
            runs.set(key.seq(), cause);
        }
    }

    private EdgeKey oldest() {
        TrayEdge oldest = null;
        for (TrayEdge each : tray.values()) {
            boolean isOlder = oldest == null || each.edge().compareTo(oldest.edge()) < 0;
            oldest = isOlder ? each : oldest;
        }
        return oldest.edge().key();
    }

    /** The cause written down, if there is one: what is still in a turn need not have any. */
    public Optional<Cause> of(EdgeKey key) {
        TreeMap<String, Runs> ofUnit = boots.get(key.unit());
        Runs runs = ofUnit == null ? null : ofUnit.get(key.boot());
        return Optional.ofNullable(runs == null ? null : runs.of(key.seq()));
    }

    private Runs runs(EdgeKey key) {
        TreeMap<String, Runs> ofUnit = boots.computeIfAbsent(key.unit(), u -> new TreeMap<>());
        Runs runs = ofUnit.get(key.boot());
        if (runs == null && bootCount < BOOTS_MAX) {
            runs = new Runs();
            bootCount++;
            ofUnit.put(key.boot(), runs);
        }
        return runs;
    }

    /** What is in the tray and in no turn any more. */
    public Collection<TrayEdge> tray() {
        return Collections.unmodifiableCollection(tray.values());
    }

    /** How many passages of the tray are not kept as such: the oldest, when there were too many. */
    public long trayDropped() {
        return trayDropped;
    }

    /** Moves instants to where their time lines are now. */
    public void carry(Carry carry) {
        tray.replaceAll(
                (key, kept) -> {
                    TimedEdge moved = kept.edge().moved(carry.of(kept.edge().line()));
                    return new TrayEdge(kept.station(), moved, kept.cause());
                });
    }

    @Override
    public String toString() {
        return boots + " " + tray + " " + trayDropped;
    }
}
