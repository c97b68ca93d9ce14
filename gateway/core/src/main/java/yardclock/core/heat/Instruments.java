package yardclock.core.heat;

import java.util.function.ToDoubleBiFunction;

/**
 * How far instruments may be off, carried through to a figure: the worst corners of the box that
 * their tolerances span. Sound where the figure rises or falls all the way in each of them.
 *
 * @param celsius tolerance of the air temperature, K
 * @param percent tolerance of the humidity, percent of saturation
 */
record Instruments(double celsius, double percent) {
    /** Data sheet of the SHT3x class of sensors. */
    static final Instruments SHT3X = new Instruments(0.2, 2);

    /** A globe and a wick with ordinary thermometers, K (common practice, no source). */
    static final double GLOBE = 0.5;

    static final double WICK = 0.5;

    /** Lowest and highest value in the box. */
    record Span(double low, double high) {}

    /** The span of a figure of temperature and humidity; humidity ends at 1 and 100. */
    Span span(ToDoubleBiFunction<Double, Double> figure, double t, double rh) {
        double low = figure.applyAsDouble(t, rh);
        double high = low;
        for (int i = 0; i < 4; i++) {
            double corner =
                    figure.applyAsDouble(
                            i < 2 ? t - celsius : t + celsius,
                            i % 2 == 0 ? Math.max(1, rh - percent) : Math.min(100, rh + percent));
            low = Math.min(low, corner);
            high = Math.max(high, corner);
        }
        return new Span(low, high);
    }
}
