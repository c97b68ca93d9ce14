package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording.ExchangeRow;
import yardclock.core.time.Exchange;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/** What a long day of many units costs: time for an exchange taken in and for a stamp given. */
public final class CostFigures {
    private static final int UNITS = 32;
    private static final int HOURS = 12;
    private static final int FULL_AFTER = 512;
    private static final int STAMP_EVERY = 10;

    private long exchanges;
    private long exchangeNanos;
    private long stamps;
    private long stampNanos;

    /** Lives through the day, unit by unit. */
    public void take(long seed) {
        Random random = new Random(seed);
        List<ExchangeClock> kept = new ArrayList<>();
        for (int unit = 0; unit < UNITS; unit++) {
            SimulatedUnit simulated =
                    new SimulatedUnit(random, "S", Weather.BURSTY, Crystals.USUAL, HOURS * 3600);
            kept.add(day(simulated.exchanges()));
        }
        if (kept.size() != UNITS) {
            throw new IllegalStateException("a unit's clock is missing");
        }
    }

    /** Only what comes once the history is full is counted: from then on all cost the same. */
    private ExchangeClock day(List<ExchangeRow> rows) {
        ExchangeClock clock = new ExchangeClock();
        for (int i = 0; i < rows.size(); i++) {
            Exchange exchange = exchange(rows.get(i));
            long begun = System.nanoTime();
            clock.accept(exchange);
            long taken = System.nanoTime();
            boolean isStamped = i % STAMP_EVERY == 0;
            if (isStamped) {
                stamp(clock, exchange);
            }
            if (i >= FULL_AFTER) {
                exchanges++;
                exchangeNanos += taken - begun;
                stamps += isStamped ? 1 : 0;
                stampNanos += isStamped ? System.nanoTime() - taken : 0;
            }
        }
        return clock;
    }

    private static Optional<Stamp> stamp(ExchangeClock clock, Exchange newest) {
        return clock.at(
                new StationTick(newest.unitSentTick()),
                new GatewayTime(newest.gatewayReceivedMicros()));
    }

    private static Exchange exchange(ExchangeRow row) {
        return new Exchange(
                row.gatewaySentMicros(),
                row.stationReceivedMicros(),
                row.stationSentMicros(),
                row.gatewayReceivedMicros());
    }

    public double microsPerExchange() {
        return exchangeNanos / 1e3 / exchanges;
    }

    public double microsPerStamp() {
        return stampNanos / 1e3 / stamps;
    }

    public void print(PrintWriter to) {
        to.println(
                String.format(
                        Locale.ROOT,
                        "%d units, %d h: %d exchanges at %.1f µs each, stamps at %.1f µs each.",
                        UNITS,
                        HOURS,
                        exchanges,
                        microsPerExchange(),
                        microsPerStamp()));
        to.flush();
    }
}
