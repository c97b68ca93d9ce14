package yardclock.app.access;

import java.util.ArrayDeque;
import java.util.function.LongSupplier;

/**
 * A limit on wrong tries, for the gateway as a whole: so many within a minute of real time.
 *
 * <p>A try is taken before it is judged and given back when it was right, so that trying many at
 * once gains nothing. Safe from any thread.
 */
final class Tries {
    private static final long MINUTE_NANOS = 60_000_000_000L;

    private final int most;
    private final LongSupplier realNanos;
    private final ArrayDeque<Long> taken = new ArrayDeque<>();

    Tries(int most, LongSupplier realNanos) {
        this.most = most;
        this.realNanos = realNanos;
    }

    synchronized boolean take() {
        long now = realNanos.getAsLong();
        while (!taken.isEmpty() && now - taken.peekFirst() >= MINUTE_NANOS) {
            taken.removeFirst();
        }
        if (taken.size() >= most) {
            return false;
        }
        taken.addLast(now);
        return true;
    }

    synchronized void giveBack() {
        taken.pollLast();
    }
}
