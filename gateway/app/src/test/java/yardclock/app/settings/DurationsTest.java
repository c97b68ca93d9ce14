package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.OptionalLong;
import java.util.Random;

/** Durations as people write them. Values reckoned by hand. */
class DurationsTest {
    @ParameterizedTest
    @CsvSource({
        "1.5 s, 1500000",
        "300 ms, 300000",
        "300ms, 300000",
        "4 min 15 s, 255000000",
        "11:40, 700000000",
        "11:40.05, 700050000",
        "0:00.000001, 1",
        "1:02:03.5, 3723500000",
        "90:00, 5400000000",
        "2 h, 7200000000",
        "1 h 1 min 1 s 1 ms 1 us, 3661001001",
        "250 us, 250",
        "250 µs, 250",
        "0.000001 s, 1",
        "1.5 min, 90000000",
        "0, 0",
        "0 s, 0",
        "' 2 s ', 2000000"
    })
    void formsThatPeopleUseAreReadExactly(String text, long micros) {
        assertThat(Durations.parse(text)).isEqualTo(OptionalLong.of(micros));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "5",
                "1,5 s",
                "-1 s",
                "1e3 s",
                "15 s 4 min",
                "1 s 2 s",
                "1.5 min 3 s",
                "0.0000001 s",
                "0.5 us",
                "11:60",
                "1:60:00",
                "11:4",
                ":40",
                "1 second",
                "4 m",
                "s",
                "99999999999 s",
                "1 s x",
                "٣ s"
            })
    void whatCouldBeMisreadIsNotRead(String text) {
        assertThat(Durations.parse(text)).isEmpty();
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        long seed = 20_260_101;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            long micros = random.nextLong(1L << (1 + random.nextInt(40)));
            assertThat(Durations.parse(Durations.text(micros)))
                    .as("seed %d, round %d, %d µs", seed, i, micros)
                    .isEqualTo(OptionalLong.of(micros));
        }
    }
}
