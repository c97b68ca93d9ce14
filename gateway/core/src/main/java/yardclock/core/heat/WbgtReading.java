package yardclock.core.heat;

import yardclock.core.heat.Instruments.Span;

import java.math.BigDecimal;
import java.util.function.ToDoubleBiFunction;

/**
 * The WBGT that a reading gives, by the best method its instruments allow, with its span. Nothing
 * falls back in silence: the method goes with the value.
 *
 * @param method how it was had, in words
 */
record WbgtReading(double celsius, double low, double high, String method) {
    static final double PASCAL = 100;

    /** A globe this much warmer than the air stands in the sun (common practice, no source). */
    private static final double SUNLIT_K = 4;

    /**
     * In the sun a wick is warmer than the shade form says by a share of what the globe is above
     * the air. The outdoor model gives 0.10 to 0.25 for wind of 0.5 to 5 m/s (our own estimate from
     * it).
     */
    private static final double LEAST_SHARE = 0.10;

    private static final double MOST_SHARE = 0.25;

    static WbgtReading of(Measured measured) {
        if (measured.naturalWetBulb() != null) {
            return measured(measured);
        }
        if (measured.globe() != null) {
            return partMeasured(measured);
        }
        if (measured.needsModel()) {
            return modelled(measured);
        }
        boolean isSunlit = measured.sky() != null && measured.sky().isSunlit();
        DeclaredSun declared = new DeclaredSun(measured);
        return isSunlit && declared.isUp() ? declared.reading() : shade(measured);
    }

    private static WbgtReading measured(Measured m) {
        double wick = m.naturalWetBulb().doubleValue();
        double globe = m.globe().doubleValue();
        if (m.solarWm2() != null && m.solarWm2().signum() > 0) {
            double spread =
                    Wbgt.inSun(Instruments.WICK, Instruments.GLOBE, Instruments.SHT3X.celsius());
            return around(
                    Wbgt.inSun(wick, globe, m.celsius().doubleValue()),
                    spread,
                    "measured, in the sun");
        }
        double spread = Wbgt.outOfSun(Instruments.WICK, Instruments.GLOBE);
        return around(Wbgt.outOfSun(wick, globe), spread, "measured, out of the sun");
    }

    private static WbgtReading around(double value, double spread, String method) {
        return new WbgtReading(value, value - spread, value + spread, method);
    }

    private static WbgtReading partMeasured(Measured m) {
        double t = m.celsius().doubleValue();
        double globe = m.globe().doubleValue();
        double wind = wind(m);
        WbgtReading wick = spanned(m, (a, h) -> shadedWick(a, h, pascal(m), wind), "");
        if (globe - t <= SUNLIT_K) {
            double off = Wbgt.outOfSun(0, Instruments.GLOBE);
            return new WbgtReading(
                    Wbgt.outOfSun(wick.celsius(), globe),
                    Wbgt.outOfSun(wick.low(), globe) - off,
                    Wbgt.outOfSun(wick.high(), globe) + off,
                    "globe measured, wet bulb reckoned");
        }
        double least = LEAST_SHARE * (globe - t);
        double most = MOST_SHARE * (globe - t);
        double off = Wbgt.inSun(0, Instruments.GLOBE, Instruments.SHT3X.celsius());
        return new WbgtReading(
                Wbgt.inSun(wick.celsius() + (least + most) / 2, globe, t),
                Wbgt.inSun(wick.low() + least, globe, t) - off,
                Wbgt.inSun(wick.high() + most, globe, t) + off,
                "globe measured in the sun, wet bulb reckoned");
    }

    private static double shadedWick(double t, double rh, double pascal, double wind) {
        return WetBulb.naturalInShadeC(t, WetBulb.psychrometricC(t, rh, pascal), wind);
    }

    private static WbgtReading modelled(Measured m) {
        Sun sun =
                Sun.at(
                        m.place().epochSecond(),
                        m.place().latitude().doubleValue(),
                        m.place().longitude().doubleValue());
        Weather weather =
                new Weather(
                        m.celsius().doubleValue(),
                        m.percent().doubleValue(),
                        m.windMs().doubleValue(),
                        m.solarWm2().doubleValue(),
                        pascal(m) / PASCAL,
                        sun);
        return spanned(
                m,
                (t, rh) -> new OutdoorModel(weather.with(t, rh)).wbgtC(),
                "outdoor model from weather and sunlight");
    }

    private static WbgtReading shade(Measured m) {
        double wind = wind(m);
        return spanned(
                m,
                (t, rh) -> Wbgt.inShade(t, rh, pascal(m), wind),
                "shade only, from temperature and humidity");
    }

    private static WbgtReading spanned(
            Measured m, ToDoubleBiFunction<Double, Double> figure, String method) {
        double t = m.celsius().doubleValue();
        double rh = m.percent().doubleValue();
        Span span = Instruments.SHT3X.span(figure, t, rh);
        return new WbgtReading(figure.applyAsDouble(t, rh), span.low(), span.high(), method);
    }

    private static double wind(Measured m) {
        return m.windMs() == null ? Wbgt.INDOOR_WIND_MS : m.windMs().doubleValue();
    }

    static double pascal(Measured m) {
        BigDecimal given = m.hectopascal();
        return given == null ? WetBulb.STANDARD_PA : given.doubleValue() * PASCAL;
    }
}
