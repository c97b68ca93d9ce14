package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.util.List;

/** The arithmetic of the four stamps, against RFC 5905 section 8 (reference/ntp.csv). */
class FourStampsTest {
    private static final GatewayTime MUCH_LATER = new GatewayTime(3_600_000_000L);

    static List<Row> ntp() {
        return ReferenceTable.rows("ntp");
    }

    @ParameterizedTest
    @MethodSource("ntp")
    void the_round_trip_is_the_rfcs_delta(Row row) {
        assertThat(exchange(row).roundTripMicros()).isEqualTo(row.micros("delta"));
    }

    @ParameterizedTest
    @MethodSource("ntp")
    void a_tick_is_moved_by_the_rfcs_theta(Row row) {
        MinimumDelayClock clock = new MinimumDelayClock();
        assertThat(clock.accept(exchange(row))).isTrue();
        long tick = row.micros("t3");
        Stamp stamp = clock.at(new StationTick(tick), MUCH_LATER).orElseThrow();
        assertThat(stamp.micros()).isEqualTo(tick - row.micros("theta"));
    }

    /**
     * reference/envelope.csv gives the exact limits for a rate within 50 ppm and a perfect reading.
     * Ours allow 100 ppm and a late reading, so they must enclose those, and not by much.
     */
    @Test
    void the_limits_enclose_the_exact_envelope() {
        List<Row> rows = ReferenceTable.rows("envelope");
        MinimumDelayClock clock = new MinimumDelayClock();
        Row last = null;
        for (Row row : rows.subList(0, 2)) {
            clock.accept(
                    new Exchange(
                            row.micros("g1"),
                            row.micros("s2"),
                            row.micros("s3"),
                            row.micros("g4")));
            last = row;
            Stamp stamp = clock.at(new StationTick(10_000_000), MUCH_LATER).orElseThrow();
            double lower = row.number("lower") * 1e6;
            double upper = row.number("upper") * 1e6;
            long allowed = MinimumDelayClock.READING_MICROS + 10_000_000 * 50 / 1_000_000 + 2;
            assertThat((double) stamp.lowerMicros()).isBetween(lower - allowed, lower);
            assertThat((double) stamp.upperMicros()).isBetween(upper, upper + allowed);
        }
        assertThat(last.text("exchanges")).isEqualTo("second");
    }

    private static Exchange exchange(Row row) {
        return new Exchange(row.micros("t1"), row.micros("t2"), row.micros("t3"), row.micros("t4"));
    }
}
