package yardclock.core.time;

/**
 * One straight clock that no exchange of a segment's live window contradicts. While a newer
 * exchange does not contradict it either, nothing contradicts anything, and all straight clocks
 * need not be looked for.
 *
 * <p>That holds because an exchange leaves the more slack the later the tick is that one asks of:
 * what the witness agreed with once, it agrees with at every later tick. Where the witness does not
 * agree, nothing is said; {@link RateBand} decides. Not changed once made.
 */
final class Witness {
    /** Left to the rounding of sums of microseconds since a boot. */
    private static final double ROUNDING_MICROS = 1;

    private static final double PPM = 1e-6;
    private static final double ROOM = ClockEstimator.READING_MICROS - ROUNDING_MICROS;

    private final long tick;
    private final double offset;
    private final double rate;
    private final long firstReceivedTick;

    /**
     * @param tick where the band was asked for; no tick of the window comes after it
     * @param firstReceivedTick the window's first exchange
     */
    private Witness(long tick, RateBand band, long firstReceivedTick) {
        this.tick = tick;
        this.offset = band.centre();
        this.rate = band.centreRate();
        this.firstReceivedTick = firstReceivedTick;
    }

    /** Of the band of a window that ends with the newest exchange; null where it won't do. */
    static Witness of(ExchangeHistory history, Legs legs, long tick, RateBand band) {
        if (legs.to < history.size()) {
            return null;
        }
        for (int i = legs.from; i < legs.to; i++) {
            if (history.unitSent(i) > tick) {
                return null;
            }
        }
        return new Witness(tick, band, history.unitReceived(legs.from));
    }

    /**
     * Whether it goes with the newest exchange, and with everything before from a place on.
     *
     * @param from the first exchange of the live window
     * @param rates what the clock's rate is known to stay within
     */
    boolean agrees(ExchangeHistory history, int from, RateRange rates) {
        int newest = history.size() - 1;
        long received = history.unitReceived(newest);
        long sent = history.unitSent(newest);
        return received >= tick
                && history.unitReceived(from) >= firstReceivedTick
                && rate >= rates.lowPpm() * PPM
                && rate <= rates.highPpm() * PPM
                && at(received) >= history.down(newest) - ROOM
                && at(sent) <= history.up(newest) + ROOM
                && isWithinHard(history, received)
                && isWithinHard(history, sent);
    }

    /** With the least a rate is ever held to: any other bound leaves more room. */
    private boolean isWithinHard(ExchangeHistory history, long at) {
        HardEnvelope hard = HardEnvelope.of(history, history.size(), at, ClockEstimator.RATE_PPM);
        double offset = at(at);
        return offset >= hard.lower() - ROOM && offset <= hard.upper() + ROOM;
    }

    private double at(long when) {
        return offset + rate * (when - tick);
    }
}
