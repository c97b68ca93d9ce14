package yardclock.core.time;

/**
 * The highest of many straight lines, as a function of their common argument: convex and piecewise
 * straight. Lines are added in the order of their slopes, from the smallest; the hull is built on
 * the way in constant time a line on average.
 */
final class LineEnvelope {
    private final double[] slope;
    private final double[] height;
    private int size;

    LineEnvelope(int capacity) {
        slope = new double[capacity];
        height = new double[capacity];
    }

    /** Adds the line {@code slope · x + height}; its slope must not be below the last one's. */
    void add(double newSlope, double newHeight) {
        if (size > 0 && slope[size - 1] == newSlope) {
            if (height[size - 1] >= newHeight) {
                return;
            }
            size--;
        }
        while (size >= 2 && isHidden(newSlope, newHeight)) {
            size--;
        }
        slope[size] = newSlope;
        height[size] = newHeight;
        size++;
    }

    /** Whether the last line is nowhere the highest once the new one is in. */
    private boolean isHidden(double newSlope, double newHeight) {
        double oldCorner =
                corner(slope[size - 2], height[size - 2], slope[size - 1], height[size - 1]);
        double newCorner = corner(slope[size - 1], height[size - 1], newSlope, newHeight);
        return newCorner <= oldCorner;
    }

    private static double corner(double slopeA, double heightA, double slopeB, double heightB) {
        return (heightA - heightB) / (slopeB - slopeA);
    }

    int corners() {
        return size - 1;
    }

    /** Where the i-th and the next line cross; corners rise with i. */
    double corner(int i) {
        return corner(slope[i], height[i], slope[i + 1], height[i + 1]);
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
        return slope[low] * x + height[low];
    }
}
