package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

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
        ExchangeClock clock = new ExchangeClock();
        assertThat(clock.accept(exchange(row))).isTrue();
        long tick = row.micros("t3");
        Stamp stamp = clock.at(new StationTick(tick), MUCH_LATER).orElseThrow();
        assertThat(stamp.micros()).isEqualTo(tick - row.micros("theta"));
    }

    private static Exchange exchange(Row row) {
        return new Exchange(row.micros("t1"), row.micros("t2"), row.micros("t3"), row.micros("t4"));
    }
}
