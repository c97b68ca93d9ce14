package yardclock.sim.units;

import yardclock.sim.stage.Stage;

import java.util.List;
import java.util.SplittableRandom;

/**
 * The half of a unit that gets edges to the gateway: a cursor that walks through the buffer. Used
 * only on the stage.
 *
 * <p>While the cursor keeps up, each edge is a message of its own; behind a backlog they go in
 * arrays. What was sent and not kept within some seconds is sent again: the broker may have lost
 * it.
 */
final class EdgeSender {
    private static final int MOST_IN_FLIGHT = 8;
    private static final long REPEAT_REAL_MILLIS = 6_000;

    /** One message in so many goes out twice, as after an acknowledgement lost on the way. */
    private static final int TWICE_ONE_IN = 25;

    private final Stage stage;
    private final UnitLink link;
    private final String boot;
    private final SplittableRandom random;
    private final EdgeBuffer buffer = new EdgeBuffer(EdgeBuffer.CAPACITY);
    private long cursor;
    private long kept = -1;
    private long copiesSent;
    private int inFlight;
    private int connection;
    private boolean up;
    private boolean repeatPlanned;

    EdgeSender(Stage stage, UnitLink link, String boot, SplittableRandom random) {
        this.stage = stage;
        this.link = link;
        this.boot = boot;
        this.random = random;
    }

    void add(StoredEdge edge) {
        buffer.add(edge);
        pump();
    }

    void up() {
        up = true;
        connection++;
        inFlight = 0;
        cursor = kept + 1;
        pump();
    }

    void down() {
        up = false;
    }

    void kept(String ofBoot, long upto) {
        if (ofBoot.equals(boot) && upto > kept) {
            kept = upto;
            cursor = Math.max(cursor, kept + 1);
            buffer.dropUpTo(kept);
        }
    }

    /** Sends a range once more that the gateway misses. */
    void again(String ofBoot, long from, long to) {
        if (!ofBoot.equals(boot)) {
            return;
        }
        long next = from;
        while (next <= to) {
            List<StoredEdge> part = buffer.from(next, UnitMessages.MOST_EDGES);
            part.removeIf(edge -> edge.seq() > to);
            if (part.isEmpty() || !handOver(part)) {
                return;
            }
            next = part.get(part.size() - 1).seq() + 1;
        }
    }

    private void pump() {
        while (up && inFlight < MOST_IN_FLIGHT) {
            List<StoredEdge> next = buffer.from(cursor, UnitMessages.MOST_EDGES);
            if (next.isEmpty() || !handOver(next)) {
                break;
            }
            cursor = next.get(next.size() - 1).seq() + 1;
            if (random.nextInt(TWICE_ONE_IN) == 0) {
                handOver(next);
            }
        }
        planRepeat();
    }

    private boolean handOver(List<StoredEdge> edges) {
        int sentOn = connection;
        byte[] payload = UnitMessages.edges(boot, edges);
        boolean taken = link.publish(VirtualUnit.edgesMessage(payload), () -> handed(sentOn));
        if (taken) {
            inFlight++;
            copiesSent += edges.size();
        }
        return taken;
    }

    private void handed(int sentOn) {
        if (sentOn == connection) {
            inFlight--;
            pump();
        }
    }

    private void planRepeat() {
        if (repeatPlanned || buffer.size() == 0) {
            return;
        }
        repeatPlanned = true;
        long keptThen = kept;
        stage.afterRealMillis(REPEAT_REAL_MILLIS, () -> repeat(keptThen));
    }

    private void repeat(long keptThen) {
        repeatPlanned = false;
        if (kept == keptThen) {
            cursor = kept + 1;
        }
        pump();
    }

    int waiting() {
        return buffer.size();
    }

    UnitCounts counts(String unit, long edges) {
        return new UnitCounts(unit, boot, edges, copiesSent, kept, buffer.overflowed());
    }
}
