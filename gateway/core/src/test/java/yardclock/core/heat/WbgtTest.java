package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.time.Instant;
import java.util.List;

/**
 * WBGT measured, in the shade and in the open: ISO 7243's weights by a public validation set,
 * Bernard's shade form, and the outdoor model against its authors' own program (each file's #
 * line).
 */
class WbgtTest {
    static List<Row> direct() {
        return ReferenceTable.rows("wbgt_direct");
    }

    static List<Row> shade() {
        return ReferenceTable.rows("wbgt_shade_from_t_rh");
    }

    static List<Row> outdoors() {
        return ReferenceTable.rows("liljegren");
    }

    @ParameterizedTest
    @MethodSource("direct")
    void measured_values_weigh_as_the_standard_says(Row row) {
        double tnw = row.number("tnw_c");
        double tg = row.number("tg_c");
        double wbgt =
                row.text("solar").equals("1")
                        ? Wbgt.inSun(tnw, tg, row.number("ta_c"))
                        : Wbgt.outOfSun(tnw, tg);
        assertThat(wbgt).isCloseTo(row.number("wbgt_c"), within(0.1));
    }

    @ParameterizedTest
    @MethodSource("shade")
    void in_the_shade_bernards_wick_gives_the_computed_value(Row row) {
        double t = row.number("t_c");
        double wet = row.number("tpwb_c");
        assertThat(WetBulb.naturalInShadeC(t, wet, 0.3))
                .isCloseTo(row.number("tnwb_v0.3_c"), within(0.002));
        assertThat(WetBulb.naturalInShadeC(t, wet, 1))
                .isCloseTo(row.number("tnwb_v1_c"), within(0.002));
        // The table solved its own wet bulb; ours is the handbook's and differs by up to 0.06.
        double rh = row.number("rh_pct");
        assertThat(Wbgt.inShade(t, rh, WetBulb.STANDARD_PA, 0.3))
                .isCloseTo(row.number("wbgt_v0.3_c"), within(0.06));
        assertThat(Wbgt.inShade(t, rh, WetBulb.STANDARD_PA, 1))
                .isCloseTo(row.number("wbgt_v1_c"), within(0.06));
    }

    @ParameterizedTest
    @MethodSource("outdoors")
    void the_outdoor_model_is_its_authors_program(Row row) {
        OutdoorModel model = new OutdoorModel(weather(row));
        assertThat(model.globeC()).isCloseTo(row.number("tg_c"), within(0.3));
        assertThat(model.naturalWetBulbC()).isCloseTo(row.number("tnwb_c"), within(0.2));
        assertThat(model.psychrometricC()).isCloseTo(row.number("tpwb_c"), within(0.2));
        assertThat(model.wbgtC()).isCloseTo(row.number("wbgt_c"), within(0.1));
    }

    private static Weather weather(Row row) {
        // The place and hour of the table's # line: 13:00 at GMT−5.
        Sun sun = Sun.at(Instant.parse("2024-07-15T18:00:00Z").getEpochSecond(), 33.0, -84.0);
        return new Weather(
                row.number("t_c"),
                row.number("rh_pct"),
                row.number("wind_2m_ms"),
                row.number("solar_wm2"),
                1010,
                sun);
    }

    @Test
    void the_sun_stands_where_the_almanac_has_it() {
        // Meeus, Astronomical Algorithms, example 25.a: 1992-10-13.0, declination −7.785°; seen
        // from
        // latitude −7.785° at the hour of the meridian it is straight overhead. From memory.
        Sun overhead =
                Sun.at(Instant.parse("1992-10-13T00:00:00Z").getEpochSecond(), -7.785, 176.6);
        assertThat(overhead.cosZenith()).isCloseTo(1, within(0.0001));
        // The earth is nearest the sun early in January, at 0.983 astronomical units (common
        // knowledge of almanacs, from memory).
        Sun january = Sun.at(Instant.parse("2024-01-03T00:00:00Z").getEpochSecond(), 0, 0);
        assertThat(january.distance()).isCloseTo(0.9833, within(0.0002));
    }

    @Test
    void by_night_no_light_counts() {
        Sun night = Sun.at(Instant.parse("2024-07-15T06:00:00Z").getEpochSecond(), 33.0, -84.0);
        assertThat(night.cosZenith()).isNegative();
        Weather weather = new Weather(30, 50, 1, 800, 1010, night);
        assertThat(weather.light()).isZero();
        assertThat(new OutdoorModel(weather).globeC()).isLessThan(30);
    }
}
