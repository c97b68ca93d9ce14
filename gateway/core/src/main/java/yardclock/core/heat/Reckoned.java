package yardclock.core.heat;

import yardclock.core.heat.Instruments.Span;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * One reading, reckoned through: indices, limits, and the level by the default bounds of the heat
 * design, a proposal for the authority having jurisdiction and its medical director to sign. A
 * level goes by the upper end of what the instruments allow; the heat index may raise what the WBGT
 * says and never lowers it. Pure: the same reading gives the same figures on every machine.
 */
final class Reckoned {
    /** Very heavy work in gear, W; for want of a plan's own (heat design). */
    private static final double DEFAULT_WORK_W = 415;

    private static final int DIGITS = 4;
    private static final double SUSPECT_DEW_POINT_C = 32;

    private final Measured measured;
    private final double t;
    private final double rh;
    private final double fahrenheit;
    private final List<String> reasons = new ArrayList<>();
    private int level;

    Reckoned(Measured measured) {
        this.measured = measured;
        this.t = measured.celsius().doubleValue();
        this.rh = measured.percent().doubleValue();
        this.fahrenheit = HeatIndex.toFahrenheit(t);
    }

    HeatFigures figures() {
        WbgtReading wbgt = WbgtReading.of(measured);
        double work =
                measured.workWatts() == null ? DEFAULT_WORK_W : measured.workWatts().doubleValue();
        double chill = chill();
        double dewPoint = Vapour.dewPointC(t, rh);
        judge(wbgt.high(), work, chill);
        return new HeatFigures(
                rounded(HeatIndex.fahrenheit(fahrenheit, rh)),
                HeatIndex.branch(fahrenheit, rh),
                rounded(WetBulb.psychrometricC(t, rh, WbgtReading.pascal(measured))),
                rounded(dewPoint),
                rounded(wbgt.celsius()),
                rounded(wbgt.low()),
                rounded(wbgt.high()),
                wbgt.method(),
                rounded(WorkLimits.unacclimatizedC(work)),
                rounded(WorkLimits.acclimatizedC(work)),
                rounded(WorkLimits.workMinutesUnacclimatized(wbgt.celsius(), work)),
                Double.isNaN(chill) ? null : rounded(chill),
                level,
                List.copyOf(reasons),
                cautions(dewPoint, !Double.isNaN(chill)));
    }

    /** Not a number where there is none, or none can be said. */
    private double chill() {
        return measured.windMs() == null
                ? Double.NaN
                : WindChill.fahrenheit(fahrenheit, WindChill.mph(measured.windMs().doubleValue()));
    }

    private void judge(double wbgt, double work, double chill) {
        Span index =
                Instruments.SHT3X.span(
                        (a, h) -> HeatIndex.fahrenheit(HeatIndex.toFahrenheit(a), h), t, rh);
        for (int i = 0; i < HeatWatch.BOUNDS_DECI.length; i++) {
            reach(i + 1, "heat index", index.high(), HeatWatch.BOUNDS_DECI[i] / 10.0, "°F");
        }
        reach(1, "WBGT", wbgt, WorkLimits.unacclimatizedC(work), "°C");
        reach(2, "WBGT", wbgt, Math.min(27.8, WorkLimits.acclimatizedC(work)), "°C");
        reach(3, "WBGT", wbgt, 30.1, "°C");
        reach(4, "WBGT", wbgt, 32.2, "°C");
        if (chill <= 32) {
            raise(1, "The wind chill is " + tenth(chill) + " °F, at or below 32 °F.");
        }
        if (chill <= -18) {
            raise(3, "The wind chill is " + tenth(chill) + " °F, at or below −18 °F.");
        }
    }

    private void reach(int to, String what, double value, double bound, String unit) {
        if (value >= bound) {
            String may = "The " + what + " may be " + tenth(value) + ' ' + unit;
            raise(to, may + " and reaches " + tenth(bound) + ' ' + unit + '.');
        }
    }

    private void raise(int to, String reason) {
        level = Math.max(level, to);
        reasons.add("Level " + to + ": " + reason);
    }

    private List<String> cautions(double dewPoint, boolean isChillSaid) {
        List<String> cautions = new ArrayList<>();
        if (measured.globe() == null && !measured.needsModel()) {
            cautions.add(
                    "This WBGT holds in the shade only. In the sun the true value is about 2.6 to"
                            + " 6.3 °C higher: measure the globe, or give the sunlight.");
        }
        if (dewPoint > SUSPECT_DEW_POINT_C) {
            cautions.add("The dew point is above 32 °C: look at the humidity sensor.");
        }
        if (isChillSaid) {
            cautions.add(
                    "Wind chill is meant for the wind at 10 m, which is stronger than at 2 m; the"
                            + " wind was taken as it was given.");
        }
        if (measured.workWatts() == null) {
            cautions.add("No work was given; the limits are for 415 W.");
        }
        cautions.add(
                "The limits are for ordinary work clothes. No adjustment for turnout gear is set;"
                        + " medical direction has to give one.");
        cautions.add(
                "People have died of heat below every bound. This is advice: local codes and"
                        + " medical direction decide.");
        return List.copyOf(cautions);
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(DIGITS, RoundingMode.HALF_UP);
    }

    private static String tenth(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
