package yardclock.app.web;

import com.fasterxml.jackson.databind.JsonNode;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes fields out of a JSON object one by one and remembers what was wrong with them, so that the
 * refusal can name the field. Owned by one request.
 */
final class Fields {
    private final JsonNode json;
    private final List<String> wrong = new ArrayList<>();

    Fields(JsonNode json) {
        this.json = json;
    }

    /** What is wrong, as one sentence; empty when all is well. */
    String wrong() {
        return String.join(" ", wrong);
    }

    /** Text of at most so many characters, not empty. */
    String text(String field, int most) {
        String text = optionalText(field, most);
        if (text.isEmpty() && json.path(field).isTextual()) {
            wrong.add("“" + field + "” must not be empty.");
        } else if (!json.path(field).isTextual()) {
            complain(field, "must be text of at most " + most + " characters");
        }
        return text;
    }

    /** Text, or the empty string when it is left out. */
    String optionalText(String field, int most) {
        JsonNode node = json.path(field);
        if (node.isMissingNode()) {
            return "";
        }
        String text = node.asText("");
        boolean good =
                node.isTextual()
                        && text.length() <= most
                        && text.codePoints().noneMatch(Fields::isControl);
        if (!good) {
            complain(field, "must be text of at most " + most + " characters");
        }
        return good ? text : "";
    }

    /** A whole number within limits, both included. */
    long whole(String field, long least, long most) {
        JsonNode node = json.path(field);
        boolean good =
                node.isIntegralNumber()
                        && node.canConvertToLong()
                        && node.longValue() >= least
                        && node.longValue() <= most;
        if (!good) {
            complain(field, "must be a whole number from " + least + " to " + most);
        }
        return good ? node.longValue() : least;
    }

    /** A whole number within limits, or null for none; it must not be left out. */
    void wholeOrNull(String field, long least, long most) {
        if (!json.path(field).isNull()) {
            whole(field, least, most);
        }
    }

    /** A whole number from −1 on; −1 when it is left out. */
    long optionalWhole(String field, long most) {
        return json.path(field).isMissingNode() ? -1 : whole(field, -1, most);
    }

    /** Whole numbers from −1 on; none when it is left out. */
    List<Long> optionalWholes(String field, int mostOfThem) {
        JsonNode node = json.path(field);
        List<Long> numbers = new ArrayList<>();
        node.forEach(each -> numbers.add(each.asLong()));
        boolean good = node.isMissingNode() || node.isArray() && node.size() <= mostOfThem;
        for (JsonNode each : node) {
            good &= each.isIntegralNumber() && each.canConvertToLong() && each.longValue() >= -1;
        }
        if (!good) {
            complain(field, "must be at most " + mostOfThem + " whole numbers from -1 on");
        }
        return good ? numbers : List.of();
    }

    boolean yesOrNo(String field) {
        if (!json.path(field).isBoolean()) {
            complain(field, "must be true or false");
        }
        return json.path(field).asBoolean();
    }

    /** One of these words. */
    String word(String field, List<String> words) {
        String text = json.path(field).asText("");
        if (!json.path(field).isTextual() || !words.contains(text)) {
            complain(field, "must be one of " + String.join(", ", words));
        }
        return text;
    }

    JsonNode object(String field) {
        if (!json.path(field).isObject()) {
            complain(field, "must be an object");
        }
        return json.path(field);
    }

    private void complain(String field, String what) {
        String sentence = "“" + field + "” " + what + ".";
        if (!wrong.contains(sentence)) {
            wrong.add(sentence);
        }
    }

    private static boolean isControl(int codePoint) {
        return Character.isISOControl(codePoint) && codePoint != '\n' && codePoint != '\t';
    }
}
