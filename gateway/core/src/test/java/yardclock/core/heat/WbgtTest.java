package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.math.BigDecimal;
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

    @ParameterizedTest
    @MethodSource("outdoors")
    void a_declared_sun_gives_a_range_that_holds_what_the_program_gives(Row row) {
        double wind = row.number("wind_2m_ms");
        double solar = row.number("solar_wm2");
        if (solar < 650 || wind < 0.5 || wind > 4) {
            return; // Not what "the sun shines on the yard" means at one o'clock in July.
        }
        for (String measured : List.of("", "wind", "place", "wind place")) {
            WbgtReading range = WbgtReading.of(declared(row, Sky.SUN, measured));
            assertThat(range.method()).startsWith("range for the declared sun");
            assertThat(row.number("wbgt_c"))
                    .as("measured: %s", measured)
                    .isBetween(range.low() - 0.1, range.high() + 0.1);
            assertThat(range.low()).isGreaterThan(inShade(row));
        }
        // More is known, less is possible.
        WbgtReading all = WbgtReading.of(declared(row, Sky.SUN, "wind place"));
        WbgtReading none = WbgtReading.of(declared(row, Sky.SUN, ""));
        assertThat(all.high() - all.low()).isLessThan(none.high() - none.low());
    }

    private static double inShade(Row row) {
        return Wbgt.inShade(row.number("t_c"), row.number("rh_pct"), 101_000, 3);
    }

    private static Measured declared(Row row, Sky sky, String measured) {
        Measured.Place place =
                new Measured.Place(
                        Instant.parse("2024-07-15T18:00:00Z").getEpochSecond(),
                        new BigDecimal("33"),
                        new BigDecimal("-84"));
        return new Measured(
                new BigDecimal(row.text("t_c")),
                new BigDecimal(row.text("rh_pct")),
                null,
                null,
                measured.contains("wind") ? new BigDecimal(row.text("wind_2m_ms")) : null,
                null,
                measured.contains("place") ? place : null,
                new BigDecimal("1010"),
                null,
                sky);
    }

    @Test
    void in_declared_shade_or_by_night_the_shade_form_stands() {
        Row row = outdoors().get(0);
        assertThat(WbgtReading.of(declared(row, Sky.SHADE, "")).method()).startsWith("shade only");
        Measured.Place night =
                new Measured.Place(
                        Instant.parse("2024-07-15T06:00:00Z").getEpochSecond(),
                        new BigDecimal("33"),
                        new BigDecimal("-84"));
        BigDecimal thirty = new BigDecimal("30");
        Measured byNight =
                new Measured(thirty, thirty, null, null, null, null, night, null, null, Sky.SUN);
        assertThat(WbgtReading.of(byNight).method()).startsWith("shade only");
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
