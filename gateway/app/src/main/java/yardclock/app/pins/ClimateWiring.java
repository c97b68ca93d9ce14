package yardclock.app.pins;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A climate sensor of the SHT3x class on an I²C bus of this board, and as which field unit of the
 * plan it speaks. The plan says where that unit stands, so a second place is a second unit.
 *
 * <p>Written {@code fu-12:bus=1,address=0x44,every=60}; what is left out is as here.
 *
 * @param bus the number in {@code /dev/i2c-1}
 * @param address 0x44 or 0x45, by the sensor's address pin
 * @param everySeconds how often it is read, exam time
 */
public record ClimateWiring(String unit, int bus, int address, int everySeconds) {
    /** More often the sensor warms itself, and the heat watch needs one in ten minutes at most. */
    private static final int EVERY_MIN = 10;

    /** At the highest level a reading is due after ten minutes; one lost must not make it late. */
    private static final int EVERY_MAX = 300;

    private static final int BUS_MAX = 31;
    private static final Pattern UNIT = Pattern.compile("[a-z0-9-]{1,24}");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");

    /**
     * @throws IllegalArgumentException with a sentence that names what is wrong
     */
    public static ClimateWiring parse(String text) {
        String[] parts = text.split(":", 2);
        if (!UNIT.matcher(parts[0]).matches()) {
            throw refused(text, "written like fu-12:bus=1,address=0x44,every=60");
        }
        Map<String, String> given = new HashMap<>(Map.of("bus", "1", "address", "0x44"));
        given.put("every", "60");
        if (parts.length == 2) {
            read(text, parts[1], given);
        }
        return new ClimateWiring(
                parts[0],
                whole(text, given, "bus", 0, BUS_MAX),
                address(text, given.get("address")),
                whole(text, given, "every", EVERY_MIN, EVERY_MAX));
    }

    private static void read(String text, String pairs, Map<String, String> given) {
        Map<String, String> seen = new HashMap<>();
        for (String pair : pairs.split(",", -1)) {
            String[] sides = pair.split("=", 2);
            if (sides.length < 2 || !given.containsKey(sides[0])) {
                throw refused(text, "after the unit come bus=, address= and every=");
            }
            if (seen.put(sides[0], sides[1]) != null) {
                throw refused(text, sides[0] + " stands twice");
            }
        }
        given.putAll(seen);
    }

    private static int whole(String text, Map<String, String> given, String key, int min, int max) {
        String value = given.get(key);
        int number = WHOLE.matcher(value).matches() ? Integer.parseInt(value) : -1;
        if (number < min || number > max) {
            String unit = key.equals("every") ? " seconds" : "";
            throw refused(text, key + " is " + min + " to " + max + unit);
        }
        return number;
    }

    private static int address(String text, String value) {
        return switch (value) {
            case "0x44" -> Sht3x.ADDRESS;
            case "0x45" -> Sht3x.OTHER_ADDRESS;
            default -> throw refused(text, "address is 0x44 or 0x45");
        };
    }

    private static IllegalArgumentException refused(String text, String rule) {
        return new IllegalArgumentException(
                "climate sensor \"" + text + "\" is not understood: " + rule);
    }

    boolean isAtPlaceOf(ClimateWiring other) {
        return bus == other.bus && address == other.address;
    }

    /** Where it is, in words for people. */
    String words() {
        return "climate sensor of " + unit + " (I2C bus " + bus + ", 0x" + hex() + ")";
    }

    private String hex() {
        return Integer.toHexString(address);
    }
}
