package yardclock.app.settings;

import yardclock.core.course.HeatRules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the bounds of the heat watch. Everything may be left out: a bound then is the default, and
 * what has no default stays unset.
 */
final class HeatReader {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,5}(\\.\\d{1,6})?");
    private static final int CENTI = 2;
    private static final int MILLI = 3;
    private static final int MICRO = 6;

    private final Block block;

    private HeatReader(Block block) {
        this.block = block;
    }

    /** Which heat index the levels 1 to 4 begin at; two such schemes are in print. */
    enum Scheme {
        STEPS_80_90_103_125(800, 900, 1_030, 1_250),
        STEPS_80_90_105_130(800, 900, 1_050, 1_300);

        private final List<Integer> deciF;

        Scheme(Integer... deciF) {
            this.deciF = List.of(deciF);
        }
    }

    /** The rules of a plan's {@code heat} block; the defaults where it has none. */
    static HeatRules read(Block plan) {
        if (!plan.has("heat")) {
            return HeatRules.DEFAULTS;
        }
        Block block = plan.block("heat", "heat");
        HeatRules rules = new HeatReader(block).rules();
        block.close();
        return rules;
    }

    private HeatRules rules() {
        HeatRules defaults = HeatRules.DEFAULTS;
        Scheme scheme = block.word("indexScheme", Scheme.class, Scheme.STEPS_80_90_103_125);
        return new HeatRules(
                block.id("boundsVersion"),
                block.maybe("signedBy", PlanLimits.PLACE_NAME.allowed())
                        .map(v -> v.sentence(PlanLimits.PLACE_NAME))
                        .orElse(""),
                scheme.name().substring("STEPS_".length()).replace('_', '/'),
                scheme.deciF,
                wbgt(defaults.wbgtCentiC()),
                defaults.chillDeciF(),
                or(decimal("gustAtClimbs", PlanLimits.GUST, MILLI), defaults.climbGustMmPerS()),
                decimal("gustOfPlate", PlanLimits.GUST, MILLI),
                decimal("turnoutAdds", PlanLimits.TURNOUT, CENTI),
                place());
    }

    private List<Integer> wbgt(List<Integer> defaults) {
        int rest = or(decimal("wbgtMoreRest", PlanLimits.WBGT, CENTI), defaults.get(0));
        int hold = or(decimal("wbgtHold", PlanLimits.WBGT, CENTI), defaults.get(1));
        int stop = or(decimal("wbgtStop", PlanLimits.WBGT, CENTI), defaults.get(2));
        if (rest >= hold || hold >= stop) {
            block.wrong("wbgtStop", "the bounds do not rise", "wbgtMoreRest, wbgtHold, wbgtStop");
        }
        return List.of(rest, hold, stop);
    }

    private HeatRules.Place place() {
        Integer north = decimal("latitude", PlanLimits.LATITUDE, MICRO);
        Integer east = decimal("longitude", PlanLimits.LONGITUDE, MICRO);
        if ((north == null) != (east == null)) {
            block.wrong("latitude", "one half of a place is none", "latitude and longitude");
            return null;
        }
        return north == null ? null : new HeatRules.Place(north, east);
    }

    private static int or(Integer value, int absent) {
        return value == null ? absent : value;
    }

    /** A number in whole parts of its unit; null when left out and after a problem. */
    private Integer decimal(String key, PlanLimits limit, int digits) {
        Optional<Value> value = block.maybe(key, limit.allowed());
        if (value.isEmpty()) {
            return null;
        }
        String text = value.get().text();
        BigDecimal number = DECIMAL.matcher(text).matches() ? new BigDecimal(text) : null;
        boolean isTaken =
                number != null
                        && number.stripTrailingZeros().scale() <= digits
                        && number.compareTo(BigDecimal.valueOf(limit.min())) >= 0
                        && number.compareTo(BigDecimal.valueOf(limit.max())) <= 0;
        if (!isTaken) {
            String allowed = Block.allowed(limit) + ", at most " + digits + " digits after a point";
            block.wrong(key, '"' + text + "\" is no such number", allowed);
            return null;
        }
        return number.movePointRight(digits).intValueExact();
    }
}
