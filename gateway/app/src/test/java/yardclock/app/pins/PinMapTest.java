package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Map;

class PinMapTest {
    @Test
    void aUnitAndItsLinesAreRead() {
        assertThat(PinMap.parse("fu-12:1=17,2=27"))
                .isEqualTo(new PinMap("fu-12", Map.of(1, 17, 2, 27)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fu-12 | written like",
                "fu-12: | written like",
                "FU:1=17 | written like",
                "fu-12:1=17, | written like",
                "fu-12:9=17 | sensors are 1 to 8",
                "fu-12:0=17 | sensors are 1 to 8",
                "fu-12:1=1 | lines are 2 to 27",
                "fu-12:1=28 | lines are 2 to 27",
                "fu-12:1=17,1=18 | sensor 1 stands twice",
                "fu-12:1=17,2=17 | two sensors are on one line",
            })
    void whatIsNotUnderstoodIsRefusedInWords(String text, String rule) {
        assertThatThrownBy(() -> PinMap.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(text)
                .hasMessageContaining(rule);
    }
}
