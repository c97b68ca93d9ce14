package yardclock.app.records.dossier;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.passage.EdgeKey;
import yardclock.core.ruling.Act;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** Whom an act is about, whatever its kind: read from the fields it has in JSON. */
final class Acts {
    private Acts() {}

    /** About this number, or about everybody; also each strike, whose edge says whose it is. */
    static boolean concerns(Act act, int number) {
        return switch (act.kind()) {
            case HOLD_COURSE, RESUME_COURSE, STOP_ALL, RESTART, STATION_READY, STRIKE, ASSIGN ->
                    true;
            case BEGIN_CALIBRATION, END_CALIBRATION, GO_ON_BY_HAND, ADJUST_TRIGGER -> true;
            // Without these a release would be admitted, or not, otherwise than it was.
            case CHECKLIST_DONE, CHECKLIST_OPEN, TEAM_AWAY, TEAM_BACK, NOTE_SURFACE -> true;
            // A part can't say what a proof run saw, nor who was in its way: it stays out.
            case BEGIN_PROOF_RUN, PROOF_TAP, PROOF_SIGNAL, SIGN_PROOF_RUN, END_PROOF_RUN -> false;
            default -> isOf(act, number);
        };
    }

    static boolean isOf(Act act, int number) {
        JsonNode fields = fields(act);
        return fields.path("number").asInt(0) == number
                || fields.path("otherNumber").asInt(0) == number;
    }

    static Optional<String> proctorDevice(Act act) {
        return Optional.ofNullable(fields(act).path("proctorDevice").textValue());
    }

    /** The edge an act names, if it names one. */
    static Optional<EdgeKey> edge(Act act) {
        JsonNode fields = fields(act);
        return fields.path("seq").isIntegralNumber() && fields.path("unit").isTextual()
                ? Optional.of(
                        new EdgeKey(
                                fields.path("unit").asText(),
                                fields.path("boot").asText(),
                                fields.path("seq").asLong()))
                : Optional.empty();
    }

    /** The same act, its edge under another number. */
    static Act renumbered(Act act, UnaryOperator<EdgeKey> numbers) {
        Optional<EdgeKey> edge = edge(act);
        if (edge.isEmpty()) {
            return act;
        }
        ObjectNode fields = (ObjectNode) fields(act);
        fields.put("seq", numbers.apply(edge.get()).seq());
        try {
            return Json.mapper().treeToValue(fields, Act.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an act is read as it was written: " + act, e);
        }
    }

    static JsonNode fields(Act act) {
        return Json.mapper().valueToTree(act);
    }
}
