package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.util.List;

/** The National Weather Service's chart of 2001, and a public set in °C (each file's # line). */
class WindChillTest {
    private static final double KMH_PER_MPH = 1.609344;

    static List<Row> chart() {
        return ReferenceTable.rows("wind_chill_chart_f");
    }

    static List<Row> celsius() {
        return ReferenceTable.rows("wind_chill_c");
    }

    @ParameterizedTest
    @MethodSource("chart")
    void every_cell_of_the_chart_comes_out(Row row) {
        for (String column : row.cells().keySet()) {
            if (!column.equals("t_f")) {
                double mph = Double.parseDouble(column.replace("mph", ""));
                double chill = WindChill.fahrenheit(row.number("t_f"), mph);
                assertThat(Math.floor(chill + 0.5)).as(column).isEqualTo(row.number(column));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("celsius")
    void in_still_air_it_is_the_airs_temperature_else_the_sets_value(Row row) {
        double mph = row.number("v_kmh") / KMH_PER_MPH;
        double fahrenheit = WindChill.fahrenheit(HeatIndex.toFahrenheit(row.number("t_c")), mph);
        double celsius = (fahrenheit - 32) * 5 / 9;
        // The file's last two rows are the unguarded formula; below 3 mph there is no wind chill.
        double meant = mph < 3 ? row.number("t_c") : row.number("wct_c");
        assertThat(celsius).isCloseTo(meant, within(row.number("tol")));
    }

    @Test
    void above_fifty_degrees_there_is_none() {
        assertThat(WindChill.fahrenheit(50.1, 20)).isNaN();
        assertThat(WindChill.fahrenheit(50, 20)).isLessThan(50);
    }
}
