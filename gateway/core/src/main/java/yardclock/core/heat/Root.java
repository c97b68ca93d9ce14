package yardclock.core.heat;

import java.util.function.DoubleUnaryOperator;

/** Where a function that rises or falls all the way crosses zero, by halving. */
final class Root {
    /** From 200 K down to less than a millionth. */
    private static final int HALVINGS = 40;

    private Root() {}

    /** The crossing between two places; where there is none, the nearer end. */
    static double of(DoubleUnaryOperator function, double from, double to) {
        boolean isRising = function.applyAsDouble(to) > function.applyAsDouble(from);
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (function.applyAsDouble(middle) > 0 == isRising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
