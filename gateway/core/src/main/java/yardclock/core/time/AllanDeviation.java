package yardclock.core.time;

/**
 * How steady a clock is over a time span m·τ0, from its phase readings at even steps τ0.
 *
 * <p>Definitions of NIST Special Publication 1065, section 5: simple, overlapping and modified
 * Allan deviation, simple and overlapping Hadamard deviation. Phase x is in seconds, τ0 in seconds;
 * the result has no unit. Too few readings give NaN. Pure.
 */
public final class AllanDeviation {
    private AllanDeviation() {}

    /** Phase from fractional frequencies, starting at zero. */
    public static double[] phase(double[] frequency, double tau0) {
        double[] phase = new double[frequency.length + 1];
        for (int i = 0; i < frequency.length; i++) {
            phase[i + 1] = phase[i] + frequency[i] * tau0;
        }
        return phase;
    }

    /** Adjacent spans that do not overlap. */
    public static double simple(double[] phase, int m, double tau0) {
        return secondDifferences(phase, m, tau0, m);
    }

    /** Every span, one step apart: the usual one, with the most confidence. */
    public static double overlapping(double[] phase, int m, double tau0) {
        return secondDifferences(phase, m, tau0, 1);
    }

    private static double secondDifferences(double[] x, int m, double tau0, int step) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i + 2 * m < x.length; i += step) {
            double d = x[i + 2 * m] - 2 * x[i + m] + x[i];
            sum += d * d;
            n++;
        }
        return n == 0 ? Double.NaN : Math.sqrt(sum / (2.0 * n)) / (m * tau0);
    }

    /** Tells white from flicker phase noise. */
    public static double modified(double[] x, int m, double tau0) {
        int n = x.length - 3 * m + 1;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            double inner = 0;
            for (int i = j; i < j + m; i++) {
                inner += x[i + 2 * m] - 2 * x[i + m] + x[i];
            }
            sum += inner * inner;
        }
        double mean = sum / (2.0 * n) / ((double) m * m);
        return n <= 0 ? Double.NaN : Math.sqrt(mean) / (m * tau0);
    }

    /** Blind to a steady drift of the rate; spans that do not overlap. */
    public static double hadamard(double[] phase, int m, double tau0) {
        return thirdDifferences(phase, m, tau0, m);
    }

    public static double overlappingHadamard(double[] phase, int m, double tau0) {
        return thirdDifferences(phase, m, tau0, 1);
    }

    private static double thirdDifferences(double[] x, int m, double tau0, int step) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i + 3 * m < x.length; i += step) {
            double d = x[i + 3 * m] - 3 * x[i + 2 * m] + 3 * x[i + m] - x[i];
            sum += d * d;
            n++;
        }
        return n == 0 ? Double.NaN : Math.sqrt(sum / (6.0 * n)) / (m * tau0);
    }
}
