package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import yardclock.core.course.HeatRules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The bounds of the heat watch as a plan has them, and what is unset. */
class HeatRulesInPlanTest {
    private static final String SCHEME = "  indexScheme: steps-80-90-103-125\n";

    @Test
    void the_demo_plans_bounds_are_named_and_unsigned_and_what_nobody_gave_is_unset()
            throws IOException {
        HeatRules rules = read(demo());
        assertThat(rules.version()).isEqualTo("qb-heat-1");
        assertThat(rules.signedBy()).isEmpty();
        assertThat(rules.scheme()).isEqualTo("80/90/103/125");
        assertThat(rules.wbgtCentiC()).isEqualTo(HeatRules.DEFAULTS.wbgtCentiC());
        assertThat(rules.climbGustMmPerS()).isEqualTo(8_941);
        assertThat(rules.plateGustMmPerS()).isNull();
        assertThat(rules.turnoutCentiC()).isNull();
        assertThat(rules.place()).isNull();
    }

    @Test
    void everything_can_be_set() throws IOException {
        String more =
                "  signedBy: \"M. Vale, medical director, 2 May\"\n"
                        + "  indexScheme: steps-80-90-105-130\n"
                        + "  turnoutAdds: 4.5\n  gustOfPlate: 15.2\n"
                        + "  latitude: 33.125\n  longitude: -84.000001\n";
        HeatRules rules = read(demo().replace(SCHEME, more));
        assertThat(rules.signedBy()).startsWith("M. Vale");
        assertThat(rules.indexDeciF()).containsExactly(800, 900, 1_050, 1_300);
        assertThat(rules.turnoutCentiC()).isEqualTo(450);
        assertThat(rules.plateGustMmPerS()).isEqualTo(15_200);
        assertThat(rules.place()).isEqualTo(new HeatRules.Place(33_125_000, -84_000_001));
    }

    @ParameterizedTest
    @CsvSource({
        "turnoutAdds: -1, 0 to 20",
        "turnoutAdds: 4.505, at most 2 digits",
        "gustOfPlate: fast, 1 to 60 m/s",
        "latitude: 33, latitude and longitude",
        "longitude: 181, -180 to 180",
        "boundVersion: x, no such key"
    })
    void what_cannot_be_is_refused_with_what_would_be_allowed(String line, String allowed)
            throws IOException {
        Reading<LoadedPlan> reading = reading(demo().replace(SCHEME, "  " + line + "\n"));
        assertThat(reading.problems().text()).contains(allowed);
    }

    @Test
    void bounds_must_rise() throws IOException {
        Reading<LoadedPlan> reading = reading(demo().replace("wbgtHold: 30.1", "wbgtHold: 32.2"));
        assertThat(reading.problems().text()).contains("the bounds do not rise");
    }

    private static HeatRules read(String plan) {
        Reading<LoadedPlan> reading = reading(plan);
        return reading.value().plan().heat();
    }

    private static Reading<LoadedPlan> reading(String plan) {
        return ExamPlanFile.read(plan.getBytes(StandardCharsets.UTF_8), "plan");
    }

    private static String demo() throws IOException {
        try (InputStream in =
                HeatRulesInPlanTest.class.getResourceAsStream("/yardclock/demo/plan.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
