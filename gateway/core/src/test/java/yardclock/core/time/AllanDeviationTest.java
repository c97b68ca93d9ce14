package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.util.List;

/** The test sets of NIST Special Publication 1065, pp. 107–108 (reference/allan.csv). */
class AllanDeviationTest {
    private static final double[] SMALL = {892, 809, 823, 798, 671, 644, 883, 903, 677};

    static List<Row> sets() {
        return ReferenceTable.rows("allan");
    }

    @ParameterizedTest
    @MethodSource("sets")
    void the_published_values_come_out(Row row) {
        double[] frequency = row.text("set").equals("small") ? SMALL : generated();
        double[] phase = AllanDeviation.phase(frequency, 1);
        int m = Integer.parseInt(row.text("m"));
        same(AllanDeviation.simple(phase, m, 1), row.number("adev"));
        same(AllanDeviation.overlapping(phase, m, 1), row.number("oadev"));
        same(AllanDeviation.modified(phase, m, 1), row.number("mdev"));
        same(AllanDeviation.hadamard(phase, m, 1), row.number("hdev"));
        same(AllanDeviation.overlappingHadamard(phase, m, 1), row.number("ohdev"));
    }

    private static void same(double value, double published) {
        assertThat(value).isCloseTo(published, within(published * 1e-6));
    }

    private static double[] generated() {
        double[] values = new double[1000];
        long n = 1_234_567_890L;
        for (int i = 0; i < values.length; i++) {
            values[i] = n / 2_147_483_647.0;
            n = 16_807 * n % 2_147_483_647L;
        }
        return values;
    }
}
