package yardclock.app.lane;

import java.util.concurrent.TimeUnit;

/**
 * When frames are drawn: soon after a change but never too often, and now and then without one.
 * Real nanoseconds throughout; owned by the lane's thread.
 */
final class FramePacing {
    private static final long GAP = TimeUnit.MILLISECONDS.toNanos(Limits.FRAME_GAP_MILLIS);
    private static final long AGE = TimeUnit.MILLISECONDS.toNanos(Limits.FRAME_AGE_MILLIS);

    private long drawnNanos;
    private boolean changed = true;
    private boolean edgeWaits;
    private long oldestEdgeNanos;

    FramePacing(long nowNanos) {
        drawnNanos = nowNanos - AGE;
    }

    void changed() {
        changed = true;
    }

    /** An edge that came at this moment will be seen in the next frames. */
    void edge(long cameNanos) {
        if (!edgeWaits) {
            edgeWaits = true;
            oldestEdgeNanos = cameNanos;
        }
    }

    /** How long until the next drawing is due; 0 or less when it is. */
    long untilDue(long nowNanos) {
        return drawnNanos + (changed ? GAP : AGE) - nowNanos;
    }

    void begun(long nowNanos) {
        drawnNanos = nowNanos;
        changed = false;
    }

    /** How long the oldest edge in these frames took to get there, or −1 when there is none. */
    long edgeToFrameNanos(long nowNanos) {
        long took = edgeWaits ? nowNanos - oldestEdgeNanos : -1;
        edgeWaits = false;
        return took;
    }
}
