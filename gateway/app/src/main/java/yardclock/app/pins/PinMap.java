package yardclock.app.pins;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which field unit the gateway's own board plays, and which pin each of its sensors is on.
 *
 * <p>Written {@code fu-12:1=17,2=27}: the unit, then sensor numbers 1–8 with the GPIO line numbers
 * as the board's maker counts them.
 */
public record PinMap(String unit, Map<Integer, Integer> lineOfSensor) {
    private static final int SENSORS = 8;

    /** The 40-pin header brings out lines 2–27. */
    private static final int FIRST_LINE = 2;

    private static final int LAST_LINE = 27;

    static final String LINES = FIRST_LINE + " to " + LAST_LINE;

    private static final Pattern WHOLE =
            Pattern.compile("([a-z0-9-]{1,24}):(\\d{1,2}=\\d{1,2}(?:,\\d{1,2}=\\d{1,2})*)");

    public PinMap {
        lineOfSensor = Map.copyOf(lineOfSensor);
    }

    /** A unit without any sensor on a pin. */
    public static PinMap none(String unit) {
        return new PinMap(unit, Map.of());
    }

    /**
     * @throws IllegalArgumentException with a sentence that names what is wrong
     */
    public static PinMap parse(String text) {
        Matcher whole = WHOLE.matcher(text);
        if (!whole.matches()) {
            throw refused(text, "written like fu-12:1=17,2=27");
        }
        Map<Integer, Integer> lines = new TreeMap<>();
        for (String pair : whole.group(2).split(",")) {
            int sensor = Integer.parseInt(pair.substring(0, pair.indexOf('=')));
            int line = Integer.parseInt(pair.substring(pair.indexOf('=') + 1));
            if (sensor < 1 || sensor > SENSORS) {
                throw refused(text, "sensors are 1 to " + SENSORS);
            }
            if (!isLine(line)) {
                throw refused(text, "lines are " + LINES);
            }
            if (lines.put(sensor, line) != null) {
                throw refused(text, "sensor " + sensor + " stands twice");
            }
        }
        if (new TreeSet<>(lines.values()).size() < lines.size()) {
            throw refused(text, "two sensors are on one line");
        }
        return new PinMap(whole.group(1), lines);
    }

    static boolean isLine(int line) {
        return line >= FIRST_LINE && line <= LAST_LINE;
    }

    private static IllegalArgumentException refused(String text, String rule) {
        return new IllegalArgumentException("pins \"" + text + "\" are not understood: " + rule);
    }
}
