package yardclock.app.records.dossier;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.ActKind;

import java.util.Optional;

/** Whom an act is about, whatever its kind: read from the fields it has in JSON. */
final class Acts {
    private Acts() {}

    /** About this number, or about the course or a station as such; notes of the day are not. */
    static boolean concerns(Act act, int number) {
        int about = fields(act).path("number").asInt(0);
        return about == number || about == 0 && act.kind() != ActKind.NOTE;
    }

    static Optional<String> proctorDevice(Act act) {
        return Optional.ofNullable(fields(act).path("proctorDevice").textValue());
    }

    static JsonNode fields(Act act) {
        return Json.mapper().valueToTree(act);
    }
}
