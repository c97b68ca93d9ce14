package yardclock.app.stations;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads one JSON object field by field and remembers the first thing that is wrong.
 *
 * <p>After a refusal every further read gives a placeholder: the reader asks {@link #rejection()}
 * once, at the end. Belongs to one thread.
 */
final class Fields {
    private static final int SHOWN_CHARS = 40;

    private final JsonNode object;
    private Rejection first;

    Fields(JsonNode object) {
        this.object = object;
        if (!object.isObject()) {
            refuse(RejectionReason.WRONG_SHAPE, "an object was expected, not " + shown(object));
        }
    }

    Optional<Rejection> rejection() {
        return Optional.ofNullable(first);
    }

    boolean has(String name) {
        return object.has(name);
    }

    /** The message's version must be there and be the one this gateway speaks. */
    void version(int spoken) {
        JsonNode v = object.get("v");
        if (v == null) {
            refuse(RejectionReason.MISSING_VERSION, "the field v is missing");
        } else if (!v.isIntegralNumber() || !v.canConvertToInt() || v.intValue() != spoken) {
            refuse(
                    RejectionReason.UNKNOWN_VERSION,
                    "version " + shown(v) + " is not spoken here, only " + spoken);
        }
    }

    int whole(String name, int min, int max) {
        return (int) whole(name, (long) min, (long) max);
    }

    long whole(String name, long min, long max) {
        JsonNode value = object.get(name);
        if (value == null) {
            return missing(name);
        }
        return whole(name, value, min, max);
    }

    /** A number that may be absent; null then. */
    Integer wholeOrNull(String name, int min, int max) {
        JsonNode value = object.get(name);
        return value == null ? null : (Integer) (int) whole(name, value, min, max);
    }

    long whole(String name, JsonNode value, long min, long max) {
        if (!value.isIntegralNumber()) {
            refuse(
                    RejectionReason.NOT_AN_INTEGER,
                    name + " is " + shown(value) + ", a whole number was expected");
            return min;
        }
        if (!value.canConvertToLong() || value.longValue() < min || value.longValue() > max) {
            refuse(
                    RejectionReason.OUT_OF_RANGE,
                    name + " is " + shown(value) + ", allowed are " + min + " to " + max);
            return min;
        }
        return value.longValue();
    }

    String text(String name, Pattern allowed) {
        JsonNode value = object.get(name);
        if (value == null) {
            missing(name);
            return "";
        }
        if (!value.isTextual() || !allowed.matcher(value.textValue()).matches()) {
            refuse(
                    RejectionReason.BAD_TEXT,
                    name + " is " + shown(value) + ", allowed is " + allowed.pattern());
            return "";
        }
        return value.textValue();
    }

    JsonNode array(String name, int length) {
        JsonNode value = object.get(name);
        if (value == null) {
            missing(name);
        } else if (!value.isArray() || value.size() != length) {
            refuse(RejectionReason.WRONG_SHAPE, name + " must be an array of " + length);
        } else {
            return value;
        }
        return JsonNodeFactory.instance.arrayNode();
    }

    void refuse(RejectionReason reason, String words) {
        if (first == null) {
            first = new Rejection(reason, words);
        }
    }

    private long missing(String name) {
        refuse(RejectionReason.MISSING_FIELD, "the field " + name + " is missing");
        return 0;
    }

    private static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() <= SHOWN_CHARS ? text : text.substring(0, SHOWN_CHARS) + "…";
    }
}
