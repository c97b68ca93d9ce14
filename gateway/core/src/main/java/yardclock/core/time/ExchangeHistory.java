package yardclock.core.time;

import java.util.Arrays;

/**
 * The newest exchanges of one clock segment in the order of their unit ticks. Bounded: the oldest
 * are dropped, since their limits have long been wider than those of newer ones.
 *
 * <p>Kept as plain arrays because an estimate reads all of them. Not safe for several threads.
 */
final class ExchangeHistory {
    /** Forty minutes at one exchange in five seconds; an outage does not use any up. */
    static final int KEPT = 512;

    private long[] gatewaySent = new long[64];
    private long[] unitReceived = new long[64];
    private long[] unitSent = new long[64];
    private long[] gatewayReceived = new long[64];
    private int size;

    /** What the exchanges before the newest say of ticks after them. */
    private final Frontier lowers = new Frontier();

    private final Frontier uppersNegated = new Frontier();

    void add(Exchange exchange) {
        if (size == KEPT) {
            dropOldest();
        } else if (size == gatewaySent.length) {
            grow();
        }
        if (size > 0) {
            passOn(size - 1);
        }
        int at = size;
        while (at > 0 && unitReceived[at - 1] > exchange.unitReceivedTick()) {
            at--;
        }
        shiftFrom(at);
        gatewaySent[at] = exchange.gatewaySentMicros();
        unitReceived[at] = exchange.unitReceivedTick();
        unitSent[at] = exchange.unitSentTick();
        gatewayReceived[at] = exchange.gatewayReceivedMicros();
        size++;
        if (at < size - 1) {
            rebuildFrontiers();
        }
    }

    /** Keeps only so many of the first. */
    void cutTo(int count) {
        size = count;
        rebuildFrontiers();
    }

    private void rebuildFrontiers() {
        lowers.clear();
        uppersNegated.clear();
        for (int i = 0; i < size - 1; i++) {
            passOn(i);
        }
    }

    private void passOn(int i) {
        lowers.add(down(i), unitReceived[i]);
        uppersNegated.add(-up(i), unitSent[i]);
    }

    /** What a downlink leg sets as the lower limit of gateway time − unit time. */
    double down(int i) {
        return gatewaySent[i] - unitReceived[i];
    }

    /** What an uplink leg sets as the upper limit of the same. */
    double up(int i) {
        return gatewayReceived[i] - unitSent[i];
    }

    /** Whether the tick is after all exchanges before the newest. */
    boolean isAhead(long tick) {
        return lowers.isAhead(tick) && uppersNegated.isAhead(tick);
    }

    /** The lower limit by all exchanges before the newest, at a tick ahead of them. */
    double lowerAhead(long tick, double phi) {
        return lowers.highest(tick, phi);
    }

    double upperAhead(long tick, double phi) {
        return -uppersNegated.highest(tick, phi);
    }

    private void shiftFrom(int at) {
        for (long[] column : columns()) {
            System.arraycopy(column, at, column, at + 1, size - at);
        }
    }

    private void dropOldest() {
        lowers.forgetUpTo(unitReceived[0]);
        uppersNegated.forgetUpTo(unitSent[0]);
        for (long[] column : columns()) {
            System.arraycopy(column, 1, column, 0, size - 1);
        }
        size--;
    }

    private void grow() {
        int room = Math.min(KEPT, gatewaySent.length * 2);
        gatewaySent = Arrays.copyOf(gatewaySent, room);
        unitReceived = Arrays.copyOf(unitReceived, room);
        unitSent = Arrays.copyOf(unitSent, room);
        gatewayReceived = Arrays.copyOf(gatewayReceived, room);
    }

    private long[][] columns() {
        return new long[][] {gatewaySent, unitReceived, unitSent, gatewayReceived};
    }

    int size() {
        return size;
    }

    long gatewaySent(int i) {
        return gatewaySent[i];
    }

    long unitReceived(int i) {
        return unitReceived[i];
    }

    long unitSent(int i) {
        return unitSent[i];
    }

    long gatewayReceived(int i) {
        return gatewayReceived[i];
    }

    /** The middle of the unit's two ticks. */
    long unitMiddle(int i) {
        return unitReceived[i] + (unitSent[i] - unitReceived[i]) / 2;
    }

    long roundTrip(int i) {
        return (gatewayReceived[i] - gatewaySent[i]) - (unitSent[i] - unitReceived[i]);
    }

    /** Index of the first exchange whose middle is at or after the tick. */
    int firstAtOrAfter(long tick) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (unitMiddle(middle) < tick) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public String toString() {
        if (size == 0) {
            return "none";
        }
        int last = size - 1;
        return size
                + " to "
                + gatewaySent[last]
                + ","
                + unitReceived[last]
                + ","
                + unitSent[last]
                + ","
                + gatewayReceived[last];
    }
}
