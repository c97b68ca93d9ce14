package yardclock.core.time;

/**
 * The highest of many straight lines, as a function of their common argument: convex and piecewise
 * straight. Lines are added in the order of their slopes, from the smallest; the hull is built on
 * the way in constant time a line on average.
 */
final class LineEnvelope {
    private final double[] slope;
    private final double[] height;

    /** Where a line crosses the one before it; rises with the lines. */
    private final double[] crossing;

    private int size;

    LineEnvelope(int capacity) {
        slope = new double[capacity];
        height = new double[capacity];
        crossing = new double[capacity];
    }

    /** Adds the line {@code slope · x + height}; its slope must not be below the last one's. */
    void add(double newSlope, double newHeight) {
        if (size > 0 && slope[size - 1] == newSlope) {
            if (height[size - 1] >= newHeight) {
                return;
            }
            size--;
        }
        double corner = crossingLast(newSlope, newHeight);
        while (size >= 2 && corner <= crossing[size - 1]) {
            // The last line is nowhere the highest once the new one is in.
            size--;
            corner = crossingLast(newSlope, newHeight);
        }
        slope[size] = newSlope;
        height[size] = newHeight;
        crossing[size] = corner;
        size++;
    }

    private double crossingLast(double newSlope, double newHeight) {
        return size == 0 ? 0 : (height[size - 1] - newHeight) / (newSlope - slope[size - 1]);
    }

    int corners() {
        return size - 1;
    }

    /** Where the i-th and the next line cross; corners rise with i. */
    double corner(int i) {
        return crossing[i + 1];
    }

    double at(double x) {
        int low = 0;
        int high = size - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (corner(middle) < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return value(low, x);
    }

    /** The same at many arguments, which must not fall. */
    double[] at(double[] rising) {
        double[] values = new double[rising.length];
        int line = 0;
        for (int i = 0; i < rising.length; i++) {
            while (line < size - 1 && corner(line) < rising[i]) {
                line++;
            }
            values[i] = value(line, rising[i]);
        }
        return values;
    }

    private double value(int line, double x) {
        return slope[line] * x + height[line];
    }
}
