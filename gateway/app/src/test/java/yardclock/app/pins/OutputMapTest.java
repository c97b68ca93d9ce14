package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.Map;

class OutputMapTest {
    @Test
    void jobsAndTheirLinesAreRead() {
        assertThat(OutputMap.parse("pulse=5,run=6,quiet=26").lineOfJob())
                .isEqualTo(Map.of(OutputJob.PULSE, 5, OutputJob.RUN, 6, OutputJob.QUIET, 26));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pulse | written like",
                "pulse=5, | written like",
                "pulse=5,siren=6 | written like",
                "pulse=1 | lines are 2 to 27",
                "pulse=5,run=28 | lines are 2 to 27",
                "pulse=5,pulse=6 | pulse stands twice",
                "pulse=5,run=5 | two outputs are on one line",
                "run=5,heat=6 | without a pulse",
            })
    void whatIsNotUnderstoodIsRefusedInWords(String text, String rule) {
        assertThatThrownBy(() -> OutputMap.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(text)
                .hasMessageContaining(rule);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pulse=17 | fu-12:1=17 | fu-11:bus=3 | line 17 is both an output and a sensor's",
                "pulse=2 | fu-12:1=17 | fu-11 | line 2 is both an output and I2C bus 1's",
                "pulse=5 | fu-12:1=3 | fu-11 | line 3 is both a sensor's and I2C bus 1's",
            })
    void noLineHasTwoJobs(String outputs, String pins, String climate, String words) {
        OutputMap map = OutputMap.parse(outputs);
        PinMap sensors = PinMap.parse(pins);
        List<ClimateWiring> climates = List.of(ClimateWiring.parse(climate));
        assertThatThrownBy(() -> new BoardWiring(sensors, climates, map))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }
}
