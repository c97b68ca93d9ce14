package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * How far one time line of the gateway is ahead of another, by counters that ran on: the truth is
 * inside, and what can't be known is not said.
 */
class TimeLinesTest {
    private static final long SECOND = 1_000_000;
    private static final int HISTORIES = 300;

    @Test
    void the_true_shift_lies_within_the_limits_whatever_restarts_and_units_did() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            Yard yard = new Yard(seed);
            for (int line = 1; line < yard.starts.size(); line++) {
                for (int from = 0; from < line; from++) {
                    Shift shift = yard.lines.shift(from, line).orElse(null);
                    assertThat(shift).as("seed %d, %d to %d", seed, from, line).isNotNull();
                    assertThat(yard.trueShift(from, line))
                            .as("seed %d, %d to %d", seed, from, line)
                            .isBetween(shift.lowerMicros(), shift.upperMicros());
                }
            }
        }
    }

    @Test
    void another_unit_never_widens_it() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            Yard yard = new Yard(seed);
            TimeLines fewer = yard.tiedBy(1);
            Shift before = fewer.shift(0, 1).orElseThrow();
            for (int units = 2; units <= yard.units.size(); units++) {
                Shift now = yard.tiedBy(units).shift(0, 1).orElseThrow();
                String text = "seed " + seed + ", " + units + " units";
                assertThat(now.lowerMicros()).as(text).isGreaterThanOrEqualTo(before.lowerMicros());
                assertThat(now.upperMicros()).as(text).isLessThanOrEqualTo(before.upperMicros());
                before = now;
            }
        }
    }

    @Test
    void a_minute_away_costs_less_than_60_ms_once_a_minute_was_compared() {
        long widest = 0;
        for (long seed = 0; seed < 100; seed++) {
            Yard yard = new Yard(seed, 60, 16);
            widest = Math.max(widest, yard.lines.shift(0, 1).orElseThrow().widthMicros());
        }
        assertThat(widest).as("widest of 100 restarts, µs").isLessThan(60_000);
    }

    @Test
    void with_no_counter_that_ran_on_there_is_no_shift() {
        TimeLines lines = new TimeLines();
        lines.begin();
        assertThat(lines.shift(0, 1)).isEmpty();
        assertThat(lines.apart(0, 1)).isEmpty();
        assertThat(lines.apart(1, 1)).contains(Shift.NONE);
        assertThat(lines.carry().isEmpty()).isTrue();
        assertThat(lines.isContradicted()).isFalse();
    }

    @Test
    void a_counter_that_slept_through_a_whole_line_ties_the_one_before_to_the_one_after() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.begin();
        lines.tie("u1", 0, end(10, 100), end(40, 830));
        assertThat(lines.shift(0, 1)).isEmpty();
        assertThat(lines.shift(0, 2).orElseThrow().micros()).isEqualTo(700 * SECOND);
    }

    @Test
    void a_way_over_a_third_line_narrows_what_is_known_directly() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.tie("u1", 0, end(10, 100), end(20, 110));
        lines.begin();
        lines.tie("u2", 1, end(10, 200), end(20, 210));
        long byWay = lines.shift(0, 2).orElseThrow().widthMicros();
        lines.tie("u3", 0, end(10, 100), end(3_600, 3_690));
        assertThat(lines.shift(0, 2).orElseThrow().widthMicros()).isEqualTo(byWay);
    }

    @Test
    void counters_that_contradict_each_other_tie_nothing_and_it_is_said() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.tie("u1", 0, end(10, 100), end(20, 500));
        lines.tie("u2", 0, end(10, 100), end(20, 501));
        assertThat(lines.shift(0, 1)).isEmpty();
        assertThat(lines.isContradicted()).isTrue();
        lines.tie("u2", 0, end(10, 100), end(20, 500));
        assertThat(lines.shift(0, 1)).as("said again, now rightly").isPresent();
        assertThat(lines.isContradicted()).isFalse();
    }

    @Test
    void a_source_that_takes_back_its_word_ties_nothing_and_contradicts_nobody() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.tie("u1", 0, end(10, 100), end(20, 500));
        lines.tie("u2", 0, end(10, 100), end(20, 501));
        lines.untie("u2");
        assertThat(lines.isContradicted()).isFalse();
        assertThat(lines.shift(0, 1).orElseThrow().micros()).isEqualTo(390 * SECOND);
        lines.untie("u1");
        assertThat(lines.shift(0, 1)).isEmpty();
        assertThat(lines.isTied()).isFalse();
    }

    @Test
    void a_counter_that_ran_backwards_or_was_alone_for_days_ties_nothing() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.tie("u1", 0, end(20, 100), end(10, 500));
        lines.tie("u2", 0, end(20, 100), end(20 + 90_000, 500));
        assertThat(lines.sources()).isZero();
        assertThat(lines.shift(0, 1)).isEmpty();
    }

    @Test
    void instants_are_carried_once_and_again_only_when_a_better_tie_says_otherwise() {
        TimeLines lines = new TimeLines();
        lines.begin();
        lines.tie("u1", 0, end(10, 100), end(20, 500));
        assertThat(lines.carry().of(0)).isEqualTo(390 * SECOND);
        assertThat(lines.carry().isEmpty()).isTrue();
        Shift left = lines.apart(0, 1).orElseThrow();
        assertThat(left.micros()).isZero();
        assertThat(left.widthMicros()).isEqualTo(lines.shift(0, 1).orElseThrow().widthMicros());
        lines.begin();
        lines.tie("u1", 1, end(10, 700), end(20, 1_210));
        Carry carry = lines.carry();
        assertThat(carry.of(0)).isEqualTo(500 * SECOND);
        assertThat(carry.of(1)).isEqualTo(500 * SECOND);
        assertThat(carry.of(2)).isZero();
        assertThat(lines.carriedMicros(0)).isEqualTo(890 * SECOND);
        assertThat(lines.apart(0, 1).orElseThrow().micros()).as("both moved").isZero();
    }

    @Test
    void lines_beyond_those_that_are_kept_are_forgotten_and_the_others_hold() {
        TimeLines lines = new TimeLines();
        for (int line = 1; line <= 3 * LineTies.LINES_KEPT; line++) {
            lines.begin();
            lines.tie("u1", line - 1, end(10, 100), end(20, 500));
        }
        int now = lines.current();
        assertThat(lines.shift(0, now)).isEmpty();
        assertThat(lines.shift(now - 2, now).orElseThrow().micros()).isEqualTo(780 * SECOND);
    }

    /** An exchange that places a second of the counter within a millisecond of gateway time. */
    private static ClockEnd end(long tickSeconds, long gatewaySeconds) {
        long at = gatewaySeconds * SECOND;
        Stamp stamp = new Stamp(at, at - 500, at + 500);
        return new ClockEnd(new StationTick(tickSeconds * SECOND), stamp, -50_000, 50_000);
    }

    /** A gateway that restarts on other boards now and then, and units that run on. */
    private static final class Yard {
        final TimeLines lines = new TimeLines();
        final List<Unit> units = new ArrayList<>();
        final List<Long> starts = new ArrayList<>();
        private final List<Long> readings = new ArrayList<>();
        private final List<Double> rates = new ArrayList<>();
        private final List<Long> gapMiddles = new ArrayList<>();
        private final Random random;
        private final int exchangesMost;
        private final long gapMicros;
        private long now;

        Yard(long seed) {
            this(seed, 0, 60);
        }

        /**
         * @param gapSeconds how long the gateway is away, 0 for up to half an hour
         */
        Yard(long seed, int gapSeconds, int exchangesMost) {
            this.random = new Random(seed);
            this.exchangesMost = exchangesMost;
            this.gapMicros = gapSeconds * SECOND;
            int count = gapSeconds > 0 ? 6 : 1 + random.nextInt(6);
            for (int i = 0; i < count; i++) {
                units.add(new Unit());
            }
            int restarts = gapSeconds > 0 ? 1 : 1 + random.nextInt(3);
            for (int line = 0; line <= restarts; line++) {
                begin(line);
            }
        }

        private void begin(int line) {
            if (line > 0) {
                long gap =
                        gapMicros > 0
                                ? gapMicros
                                : (long) (random.nextDouble() * random.nextDouble() * 1.8e9);
                gapMiddles.add(now + gap / 2);
                now += gap;
                lines.begin();
            }
            starts.add(now);
            readings.add((long) (random.nextDouble() * 1e11));
            rates.add((random.nextDouble() * 2 - 1) * 30e-6);
            for (Unit unit : units) {
                unit.clocks.add(new ExchangeClock());
            }
            int rounds = line == 0 && gapMicros > 0 ? 60 : 4 + random.nextInt(exchangesMost);
            if (gapMicros > 0 && line == 1) {
                rounds = exchangesMost;
            }
            for (int i = 0; i < rounds; i++) {
                now += i < 4 ? 100_000 : (long) (5e6 * (0.6 + 0.8 * random.nextDouble()));
                for (int unit = 0; unit < units.size(); unit++) {
                    units.get(unit).exchange(line, now);
                    tie(lines, line, unit);
                }
            }
            now += 20 * SECOND / 10;
        }

        private void tie(TimeLines into, int line, int unit) {
            if (line > 0) {
                UnitClock before = units.get(unit).clocks.get(line - 1);
                UnitClock after = units.get(unit).clocks.get(line);
                ClockEnd last = before.last().orElseThrow();
                after.first().ifPresent(f -> into.tie("u" + unit, line - 1, last, f));
            }
        }

        /** The first restart alone, known by so many of the units. */
        TimeLines tiedBy(int count) {
            TimeLines few = new TimeLines();
            few.begin();
            for (int unit = 0; unit < count; unit++) {
                tie(few, 1, unit);
            }
            return few;
        }

        long reading(int line, long trueMicros) {
            double since = trueMicros - starts.get(line);
            return readings.get(line) + Math.round(since * (1 + rates.get(line)));
        }

        /** By how much a line is ahead of an earlier one in the middle of the gaps between. */
        long trueShift(int from, int to) {
            long shift = 0;
            for (int line = from; line < to; line++) {
                long at = gapMiddles.get(line);
                shift += reading(line + 1, at) - reading(line, at);
            }
            return shift;
        }

        /** A counter of some rate that is compared with whatever line there is. */
        private final class Unit {
            final List<UnitClock> clocks = new ArrayList<>();
            private final double ppm = (random.nextDouble() * 2 - 1) * 60;
            private final long boot = (long) (random.nextDouble() * 1e10);

            void exchange(int line, long sentMicros) {
                long there = sentMicros + delay();
                long left = there + random.nextInt(1_000);
                long back = left + delay();
                clocks.get(line)
                        .accept(
                                new Exchange(
                                        reading(line, sentMicros),
                                        tick(there),
                                        tick(left),
                                        reading(line, back)));
            }

            private long tick(long trueMicros) {
                return Math.round((trueMicros + boot) * (1 + ppm / 1e6));
            }

            /** Mostly quick, sometimes the best part of a second. */
            private long delay() {
                double mean = random.nextInt(8) == 0 ? 1e5 : 4e3;
                return 1_500 + (long) (-Math.log(1 - random.nextDouble()) * mean);
            }
        }
    }
}
