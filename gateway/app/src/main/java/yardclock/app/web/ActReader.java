package yardclock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.app.lane.Answer;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.ActKind;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/**
 * Reads an act, field by field as its record has them, so that nothing half-filled gets into the
 * journal: no null, no number out of bounds, no endless text.
 *
 * <p>{@code words} may be left out where an act has them; every other field must be there. Whether
 * the act is admissible now is not judged here: that is the rules' part.
 */
final class ActReader {
    private static final List<String> ACTS =
            Arrays.stream(ActKind.values()).map(ActKind::word).toList();
    private static final long SPLIT_MAX_MICROS = 6 * 3_600_000_000L;

    /** Readings beyond these are no readings of the open air; the rules refuse more. */
    private static final long CENTI_CELSIUS_MAX = 20_000;

    private static final long GUST_MAX_MM_PER_S = 1_000_000;

    private ActReader() {}

    /** The act, or a refusal that names what is wrong. */
    static Answer<Act> read(JsonNode json) {
        Fields fields = new Fields(json);
        String word = fields.word("act", ACTS);
        if (!fields.wrong().isEmpty()) {
            return malformed(fields.wrong());
        }
        ActKind kind = ActKind.values()[ACTS.indexOf(word)];
        ObjectNode filled = ((ObjectNode) json).deepCopy();
        for (RecordComponent component : kind.type().getRecordComponents()) {
            check(component, fields, filled);
        }
        return fields.wrong().isEmpty() ? bind(filled) : malformed(fields.wrong());
    }

    private static void check(RecordComponent component, Fields fields, ObjectNode filled) {
        String name = component.getName();
        Class<?> type = component.getType();
        if (name.equals("words")) {
            filled.put(name, fields.optionalText(name, WebLimits.WORDS_CHARS));
        } else if (type == String.class) {
            boolean isSaid = name.equals("instrument");
            fields.text(name, isSaid ? WebLimits.WORDS_CHARS : WebLimits.ID_CHARS);
        } else if (type == boolean.class) {
            fields.yesOrNo(name);
        } else if (type.isEnum()) {
            fields.word(name, words(type));
        } else if (type == Integer.class) {
            fields.wholeOrNull(name, least(name), most(name, WebLimits.NUMBER_MAX));
        } else if (type == int.class) {
            fields.whole(name, least(name), most(name, WebLimits.NUMBER_MAX));
        } else if (type == long.class) {
            fields.whole(name, 0, most(name, WebLimits.EXACT_MAX));
        } else {
            throw new IllegalStateException("no check for " + component);
        }
    }

    /** Only temperatures go below nothing. */
    private static long least(String name) {
        return name.endsWith("entiCelsius") ? -CENTI_CELSIUS_MAX : 0;
    }

    private static long most(String name, long otherwise) {
        return switch (name) {
            case "splitMicros" -> SPLIT_MAX_MICROS;
            case "centiCelsius", "globeCentiCelsius" -> CENTI_CELSIUS_MAX;
            case "millimetresPerSecond" -> GUST_MAX_MM_PER_S;
            default -> otherwise;
        };
    }

    private static List<String> words(Class<?> type) {
        return Arrays.stream(type.getEnumConstants()).map(one -> Json.word((Enum<?>) one)).toList();
    }

    private static Answer<Act> bind(ObjectNode filled) {
        try {
            return Answer.of(Json.mapper().treeToValue(filled, Act.class));
        } catch (JsonProcessingException e) {
            return malformed(WebRefusal.MALFORMED.words());
        }
    }

    private static Answer<Act> malformed(String words) {
        return Answer.refused(WebRefusal.MALFORMED.reason(), words);
    }
}
