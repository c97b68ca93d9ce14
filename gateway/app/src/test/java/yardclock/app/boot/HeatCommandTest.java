package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import yardclock.app.json.Json;

import java.io.PrintWriter;
import java.io.StringWriter;

/** {@code yardclock heat}: rows of the core's reference tables once more, through the command. */
class HeatCommandTest {
    private final StringWriter said = new StringWriter();
    private final StringWriter complained = new StringWriter();

    private int heat(String arguments) {
        return Main.commandLine()
                .setOut(new PrintWriter(said))
                .setErr(new PrintWriter(complained))
                .execute(("heat " + arguments).split(" "));
    }

    private JsonNode figures(String arguments) throws Exception {
        assertThat(heat(arguments)).as(complained.toString()).isZero();
        return Json.mapper().readTree(said.toString());
    }

    @ParameterizedTest
    @CsvSource({
        // hi_branches.csv: from the Weather Prediction Center's page.
        "95, 10, 89.4496, 'regression, low humidity'",
        "82, 95, 93.9722, 'regression, high humidity'",
        "70, 50, 69.5250, simple",
        "92, 60, 104.6844, regression",
    })
    void heat_index_in_fahrenheit(String t, String rh, double index, String branch)
            throws Exception {
        JsonNode out = figures("--fahrenheit --temperature " + t + " --humidity " + rh);
        assertThat(out.path("heatIndexF").asDouble()).isCloseTo(index, within(0.01));
        assertThat(out.path("heatIndexBranch").asText()).isEqualTo(branch);
        assertThat(out.path("method").asText()).startsWith("shade only");
    }

    @Test
    void sunlight_wind_place_and_hour_go_through_the_outdoor_model() throws Exception {
        // liljegren.csv, from the model authors' own program.
        JsonNode out =
                figures(
                        "--temperature 32 --humidity 60 --wind 0.5 --solar 900 --when"
                                + " 2024-07-15T13:00:00-05:00 --lat 33 --lon -84 --pressure 1010");
        assertThat(out.path("wbgtC").asDouble()).isCloseTo(35.14, within(0.1));
        assertThat(out.path("method").asText()).startsWith("outdoor model");
        assertThat(out.path("level").asInt()).isEqualTo(4);
        assertThat(out.path("reasons").toString()).contains("Level 4: The WBGT may be 35.");
        assertThat(out.path("wbgtLowC").asDouble()).isLessThan(out.path("wbgtC").asDouble());
        assertThat(out.path("wbgtHighC").asDouble()).isGreaterThan(out.path("wbgtC").asDouble());
    }

    @ParameterizedTest
    @CsvSource({
        // wbgt_direct.csv: a public validation set of ISO 7243's weights.
        "20, '--solar 800', 25.9, 'measured, in the sun'",
        "20, '', 27.1, 'measured, out of the sun'",
    })
    void measured_wick_and_globe_weigh(String t, String more, double wbgt, String method)
            throws Exception {
        String given = " --humidity 50 --natural-wet-bulb 25 --globe 32 ";
        JsonNode out = figures(("--temperature " + t + given + more).trim());
        assertThat(out.path("wbgtC").asDouble()).isCloseTo(wbgt, within(0.1));
        assertThat(out.path("method").asText()).isEqualTo(method);
    }

    @Test
    void limits_and_wind_chill_are_those_of_the_tables() throws Exception {
        // niosh_limits.csv and wind_chill_chart_f.csv (30 °F at 10 mph is 21).
        JsonNode out =
                figures("--fahrenheit --temperature 30 --humidity 50 --wind 4.4704 --work 300");
        assertThat(out.path("limitUnacclimatizedC").asDouble()).isCloseTo(24.973, within(0.005));
        assertThat(out.path("limitAcclimatizedC").asDouble()).isCloseTo(28.213, within(0.005));
        assertThat(Math.rint(out.path("windChillF").asDouble())).isEqualTo(21);
        assertThat(out.path("workMinutesUnacclimatized").asDouble()).isEqualTo(60);
        assertThat(out.path("level").asInt()).isEqualTo(1);
        assertThat(out.path("cautions").toString()).contains("medical direction");
    }

    @Test
    void minutes_of_work_are_those_of_the_table() throws Exception {
        // work_minutes_per_hour.csv: at a WBGT of 25 °C, 415 W for 36.7 minutes of each hour.
        JsonNode out =
                figures(
                        "--temperature 25 --humidity 100 --natural-wet-bulb 25 --globe 25 --work"
                                + " 415");
        assertThat(out.path("wbgtC").asDouble()).isEqualTo(25);
        assertThat(out.path("workMinutesUnacclimatized").asDouble()).isCloseTo(36.7, within(0.05));
    }

    @Test
    void a_globe_in_the_sun_widens_what_is_not_known_of_the_wick() throws Exception {
        // liljegren.csv, 30 °C, 50 %, 2 m/s, 900 W/m²: globe 45.24 and WBGT 28.89 by the model.
        JsonNode out = figures("--temperature 30 --humidity 50 --wind 2 --globe 45.24");
        assertThat(out.path("method").asText()).contains("in the sun");
        assertThat(28.89)
                .isBetween(out.path("wbgtLowC").asDouble(), out.path("wbgtHighC").asDouble());
    }

    @Test
    void a_declared_sun_gives_a_range_and_acts_by_its_upper_end() throws Exception {
        // liljegren.csv, 30 °C, 50 %, 2 m/s, 900 W/m²: 28.89 by the authors' own program.
        JsonNode out =
                figures(
                        "--temperature 30 --humidity 50 --wind 2 --sky sun --pressure 1010 --when"
                                + " 2024-07-15T13:00:00-05:00 --lat 33 --lon -84");
        assertThat(out.path("method").asText()).isEqualTo("range for the declared sun");
        double high = out.path("wbgtHighC").asDouble();
        assertThat(28.89).isBetween(out.path("wbgtLowC").asDouble(), high);
        assertThat(out.path("reasons").toString()).contains("The WBGT may be 29.");
        assertThat(out.path("cautions").toString()).doesNotContain("shade only");
    }

    @Test
    void without_wind_nothing_is_said_of_wind_chill() throws Exception {
        assertThat(figures("--temperature 0 --humidity 50").path("windChillF").isNull()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--temperature 61 --humidity 50",
                "--temperature 30 --humidity 0",
                "--temperature 30 --humidity 1e999999999",
                "--temperature NaN --humidity 50",
                "--temperature 30 --humidity 50 --globe 26.9",
                "--temperature 30 --humidity 50 --natural-wet-bulb 25",
                "--temperature 30 --humidity 50 --solar 800",
                "--temperature 30 --humidity 50 --wind 1 --solar 800 --lat 3 --lon 4",
                "--temperature 30 --humidity 50 --when yesterday --lat 3 --lon 4",
                "--temperature 30 --humidity 50 --work 5",
                "--temperature 30 --humidity 50 --sky blue"
            })
    void what_no_formula_holds_for_is_refused_with_a_sentence(String arguments) {
        assertThat(heat(arguments)).isEqualTo(1);
        assertThat(said.toString()).isEmpty();
        assertThat(complained.toString().strip()).endsWith(".").doesNotContain("Exception");
    }
}
