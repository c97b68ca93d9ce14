package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

class ClimateWiringTest {
    @Test
    void aUnitAloneIsTheUsualBusAndAddressOnceAMinute() {
        assertThat(ClimateWiring.parse("fu-12")).isEqualTo(new ClimateWiring("fu-12", 1, 0x44, 60));
    }

    @Test
    void busAddressAndIntervalAreRead() {
        assertThat(ClimateWiring.parse("care:every=30,bus=3,address=0x45"))
                .isEqualTo(new ClimateWiring("care", 3, 0x45, 30));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "FU | written like",
                "fu-12: | after the unit come",
                "fu-12:place=yard | after the unit come",
                "fu-12:bus | after the unit come",
                "fu-12:bus=1,bus=2 | bus stands twice",
                "fu-12:bus=32 | bus is 0 to 31",
                "fu-12:bus=one | bus is 0 to 31",
                "fu-12:address=0x46 | address is 0x44 or 0x45",
                "fu-12:address=68 | address is 0x44 or 0x45",
                "fu-12:every=9 | every is 10 to 300 seconds",
                "fu-12:every=301 | every is 10 to 300 seconds",
            })
    void whatIsNotUnderstoodIsRefusedInWords(String text, String rule) {
        assertThatThrownBy(() -> ClimateWiring.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(text)
                .hasMessageContaining(rule);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fu-12 | fu-12:address=0x45 | each needs its own unit",
                "fu-12 | fu-11 | are one sensor",
            })
    void twoSensorsMustBeTwoUnitsAndTwoPlacesOnTheBus(String one, String two, String rule) {
        List<ClimateWiring> both = List.of(ClimateWiring.parse(one), ClimateWiring.parse(two));
        assertThatThrownBy(() -> new BoardWiring(null, both, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(rule);
    }

    @Test
    void twoAddressesOfOneBusAreTwoSensors() {
        List<ClimateWiring> both =
                List.of(ClimateWiring.parse("fu-12"), ClimateWiring.parse("fu-11:address=0x45"));
        assertThat(new BoardWiring(null, both, null).climates()).isEqualTo(both);
    }
}
