package yardclock.core.heat;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReason.Kind;
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
    private static final double DECI = 10;
    private static final double CENTI = 100;

    /** How far under a bound a value must be before a level may fall (heat design). */
    private static final double MARGIN_F = 3;

    private static final double MARGIN_C = 1;
    private static final double SUSPECT_DEW_POINT_C = 32;

    private final Measured measured;
    private final double t;
    private final double rh;
    private final double fahrenheit;
    private final HeatRules rules;
    private final List<HeatReason> reasons = new ArrayList<>();
    private int level;
    private int heldLevel;

    Reckoned(Measured measured, HeatRules rules) {
        this.measured = measured;
        this.rules = rules;
        this.t = measured.celsius().doubleValue();
        this.rh = measured.percent().doubleValue();
        this.fahrenheit = HeatIndex.toFahrenheit(t);
    }

    HeatFigures figures() {
        WbgtReading wbgt = WbgtReading.of(measured);
        double work = work();
        double chill = chill();
        double dewPoint = Vapour.dewPointC(t, rh);
        judge(index(), wbgt.high(), chill);
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
                reasons.stream().map(Reckoned::sentence).toList(),
                cautions(dewPoint, !Double.isNaN(chill)));
    }

    /** Not a number where there is none, or none can be said. */
    private double chill() {
        return measured.windMs() == null
                ? Double.NaN
                : WindChill.fahrenheit(fahrenheit, WindChill.mph(measured.windMs().doubleValue()));
    }

    ReadingLevel level() {
        WbgtReading wbgt = WbgtReading.of(measured);
        Span index = index();
        judge(index, wbgt.high(), chill());
        return new ReadingLevel(
                level,
                heldLevel,
                List.copyOf(reasons),
                whole(HeatIndex.fahrenheit(fahrenheit, rh), DECI),
                whole(index.high(), DECI),
                whole(wbgt.celsius(), CENTI),
                whole(wbgt.low(), CENTI),
                whole(wbgt.high(), CENTI),
                wbgt.method(),
                whole(Vapour.dewPointC(t, rh), CENTI));
    }

    private double work() {
        return measured.workWatts() == null ? DEFAULT_WORK_W : measured.workWatts().doubleValue();
    }

    private Span index() {
        return Instruments.SHT3X.span(
                (a, h) -> HeatIndex.fahrenheit(HeatIndex.toFahrenheit(a), h), t, rh);
    }

    private void judge(Span index, double wbgtHigh, double chill) {
        for (int i = 0; i < rules.indexDeciF().size(); i++) {
            reach(i + 1, Kind.HEAT_INDEX, index.high(), rules.indexDeciF().get(i) / DECI);
        }
        double wbgt = wbgtHigh + rules.turnoutOrNone() / CENTI;
        List<Integer> bounds = rules.wbgtCentiC();
        double acclimatized = WorkLimits.acclimatizedC(work());
        reach(1, Kind.WBGT, wbgt, WorkLimits.unacclimatizedC(work()));
        reach(2, Kind.WBGT, wbgt, Math.min(bounds.get(0) / CENTI, acclimatized));
        reach(3, Kind.WBGT, wbgt, bounds.get(1) / CENTI);
        reach(4, Kind.WBGT, wbgt, bounds.get(2) / CENTI);
        freeze(1, chill, rules.chillDeciF().get(0) / DECI);
        freeze(3, chill, rules.chillDeciF().get(1) / DECI);
    }

    private void reach(int to, Kind kind, double value, double bound) {
        double margin = kind == Kind.WBGT ? MARGIN_C : MARGIN_F;
        if (value > bound - margin) {
            heldLevel = Math.max(heldLevel, to);
        }
        if (value >= bound) {
            raise(to, kind, value, bound);
        }
    }

    private void freeze(int to, double chill, double bound) {
        if (chill < bound + MARGIN_F) {
            heldLevel = Math.max(heldLevel, to);
        }
        if (chill <= bound) {
            raise(to, Kind.WIND_CHILL, chill, bound);
        }
    }

    private void raise(int to, Kind kind, double value, double bound) {
        level = Math.max(level, to);
        reasons.add(new HeatReason(to, kind, whole(value, DECI), whole(bound, DECI)));
    }

    private static String sentence(HeatReason reason) {
        String what = reason.kind().quantity();
        String unit = ' ' + reason.kind().unit();
        String value = tenth(reason.valueDeci()) + unit;
        String bound = tenth(reason.boundDeci()) + unit;
        return "Level "
                + reason.level()
                + (reason.kind() == Kind.WIND_CHILL
                        ? ": The " + what + " is " + value + ", at or below " + bound + '.'
                        : ": The " + what + " may be " + value + " and reaches " + bound + '.');
    }

    private static int whole(double value, double parts) {
        return (int) Math.rint(value * parts);
    }

    private List<String> cautions(double dewPoint, boolean isChillSaid) {
        List<String> cautions = new ArrayList<>();
        boolean isSunSaid = measured.sky() != null && measured.sky().isSunlit();
        if (measured.globe() == null && !measured.needsModel() && !isSunSaid) {
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

    private static String tenth(int deci) {
        return BigDecimal.valueOf(deci, 1).toPlainString().replace('-', '−');
    }
}
