package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;
import yardclock.core.heat.Instruments.Span;

import java.time.Instant;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/** Tolerances carried to the index: sensor_propagation.csv, computed (its # line). */
class InstrumentsTest {
    /** The table prints one digit of the index and two of WBGT; its wet bulb is another's. */
    private static final double INDEX = 0.06;

    private static final double WBGT = 0.02;

    static List<Row> propagation() {
        return ReferenceTable.rows("sensor_propagation");
    }

    @ParameterizedTest
    @MethodSource("propagation")
    void the_worst_corner_of_the_box_is_the_tables(Row row) {
        Figure index =
                new Figure((t, rh) -> HeatIndex.fahrenheit(HeatIndex.toFahrenheit(t), rh), INDEX);
        compare(row, new Instruments(0.5, 3), index, "hi_lo_0.5C3pct", "hi_hi_0.5C3pct");
        compare(row, new Instruments(0.2, 2), index, "hi_lo_0.2C2pct", "hi_hi_0.2C2pct");
        compare(row, new Instruments(1, 5), index, "hi_lo_1C5pct", "hi_hi_1C5pct");
        Figure shade =
                new Figure(
                        (t, rh) -> Wbgt.inShade(t, rh, WetBulb.STANDARD_PA, Wbgt.INDOOR_WIND_MS),
                        WBGT);
        compare(row, new Instruments(0.5, 3), shade, "shade_lo", "shade_hi");
        compareHigh(row, new Instruments(0.2, 2), shade, "shade_hi_0.2C2pct");
        // The table solved its own wet bulb, whose slope adds up over the widest box.
        Figure wide = new Figure(shade.of(), 2 * WBGT);
        compareHigh(row, new Instruments(1, 5), wide, "shade_hi_1C5pct");
        Sun sun = Sun.at(Instant.parse("2024-07-15T18:00:00Z").getEpochSecond(), 33.0, -84.0);
        Figure sunlit =
                new Figure(
                        (t, rh) -> new OutdoorModel(new Weather(t, rh, 2, 800, 1010, sun)).wbgtC(),
                        WBGT);
        compare(row, new Instruments(0.5, 3), sunlit, "sun_lo", "sun_hi");
    }

    /** What is reckoned from temperature and humidity, and how near it must be. */
    private record Figure(ToDoubleBiFunction<Double, Double> of, double tolerance) {}

    private static void compare(
            Row row, Instruments instruments, Figure figure, String low, String high) {
        double t = row.number("t_c");
        double rh = row.number("rh_pct");
        double value = figure.of().applyAsDouble(t, rh);
        Span span = instruments.span(figure.of(), t, rh);
        assertThat(span.low() - value)
                .as(low)
                .isCloseTo(row.number(low), within(figure.tolerance()));
        compareHigh(row, instruments, figure, high);
    }

    private static void compareHigh(Row row, Instruments instruments, Figure figure, String high) {
        double t = row.number("t_c");
        double rh = row.number("rh_pct");
        double value = figure.of().applyAsDouble(t, rh);
        assertThat(instruments.span(figure.of(), t, rh).high() - value)
                .as(high)
                .isCloseTo(row.number(high), within(figure.tolerance()));
    }
}
