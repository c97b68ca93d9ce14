package yardclock.core.time;

import static org.assertj.core.api.Assertions.fail;

import java.util.Optional;
import java.util.Random;
import java.util.function.LongUnaryOperator;

/**
 * A unit whose counter is a function of true gateway time, and its link: an exchange every five
 * seconds or so, mostly quick, some legs late. Knows whether stamps are true.
 */
final class TestLink {
    static final long SECOND = 1_000_000;
    private static final long READING = 50;

    private final Random random;
    private final LongUnaryOperator counter;

    TestLink(long seed, LongUnaryOperator counter) {
        this.random = new Random(seed);
        this.counter = counter;
    }

    /** A counter that began at gateway time 0 and is off by a rate. */
    static LongUnaryOperator steady(double ppm) {
        return micros -> Math.round(micros * (1 + ppm * 1e-6));
    }

    /** The same counter that reads so much more from a moment on, or less. */
    static LongUnaryOperator jumping(LongUnaryOperator counter, long atMicros, long byMicros) {
        return micros -> counter.applyAsLong(micros) + (micros >= atMicros ? byMicros : 0);
    }

    /** Exchanges from one moment to another; how many were taken. */
    int exchange(UnitClock clock, long fromMicros, long toMicros) {
        int taken = 0;
        for (long now = fromMicros; now < toMicros; now += 3 * SECOND + random.nextInt(4_000_000)) {
            taken += clock.accept(exchangeAt(now)) ? 1 : 0;
        }
        return taken;
    }

    Exchange exchangeAt(long now) {
        long there = now + leg();
        long left = there + 100 + random.nextInt(900);
        long received = counter.applyAsLong(there) + random.nextLong(READING);
        long sent = Math.max(received, counter.applyAsLong(left) + random.nextLong(READING));
        return new Exchange(now, received, sent, left + READING + leg());
    }

    private long leg() {
        double late = random.nextInt(8) == 0 ? 40_000 : 1_200;
        return 1_500 + (long) (-Math.log(1 - random.nextDouble()) * late);
    }

    /** Checks the stamps of many ticks of a stretch; how many had one at all. */
    int checkAll(String why, UnitClock clock, long fromMicros, long toMicros) {
        int stamped = 0;
        for (long t = fromMicros; t < toMicros; t += SECOND * 7 / 10) {
            Optional<Stamp> stamp = stamp(clock, t);
            stamped += stamp.isPresent() ? 1 : 0;
            if (stamp.isPresent() && !holds(stamp.get(), t)) {
                fail("%s: true instant %d is outside %s", why, t, stamp.get());
            }
        }
        return stamped;
    }

    private static boolean holds(Stamp stamp, long micros) {
        return stamp.lowerMicros() <= micros && micros <= stamp.upperMicros();
    }

    Optional<Stamp> stamp(UnitClock clock, long trueMicros) {
        StationTick tick = new StationTick(counter.applyAsLong(trueMicros));
        return clock.settled(tick, new GatewayTime(trueMicros + leg()));
    }
}
