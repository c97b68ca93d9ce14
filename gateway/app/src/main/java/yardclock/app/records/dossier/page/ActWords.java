package yardclock.app.records.dossier.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Spans;
import yardclock.core.ruling.ActKind;
import yardclock.core.ruling.Reason;

import java.util.ArrayList;
import java.util.List;

/** What a ruling or tap says, in words: the act, what it is about, its reason, its words. */
final class ActWords {
    private final View view;

    ActWords(View view) {
        this.view = view;
    }

    /**
     * @param word the act's
     * @param what its own fields, as JSON
     */
    Markup of(String word, String what) {
        JsonNode fields = read(what);
        List<Markup> lines = new ArrayList<>();
        lines.add(Markup.strong(act(word, fields)));
        String where = where(fields);
        if (!where.isEmpty()) {
            lines.add(Markup.text(where));
        }
        details(fields, lines);
        return Markup.lines(lines);
    }

    private static JsonNode read(String what) {
        try {
            return Json.mapper().readTree(what);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("an act's fields must be JSON", e);
        }
    }

    private String where(JsonNode fields) {
        String station = fields.path("station").asText("");
        String point = fields.path("point").asText("");
        String criterion = fields.path("criterion").asText("");
        List<String> parts = new ArrayList<>();
        if (!station.isEmpty()) {
            parts.add(view.station(station));
        }
        if (!point.isEmpty()) {
            parts.add(view.point(station, point));
        }
        if (!criterion.isEmpty()) {
            parts.add(view.criterion(station, criterion));
        }
        return String.join(": ", parts);
    }

    private void details(JsonNode fields, List<Markup> lines) {
        if (fields.path("splitMicros").isIntegralNumber()) {
            String time = Spans.text(fields.path("splitMicros").asLong());
            lines.add(Markup.text(view.say("Split given: ", "Parcial dado: ") + time));
        }
        if (fields.path("atMicros").isIntegralNumber()) {
            String at = view.instants.at(fields.path("atMicros").asLong());
            lines.add(Markup.text(view.say("Mark given: ", "Marca dada: ") + at));
        }
        if (fields.path("reading").isIntegralNumber()) {
            String which = Integer.toString(fields.path("reading").asInt() + 1);
            lines.add(Markup.text(view.say("Reading number ", "Lectura número ") + which));
        }
        if (fields.path("entry").isIntegralNumber()) {
            String entry = fields.path("entry").asText();
            lines.add(
                    Markup.text(
                            view.say("The ruling of entry ", "La decisión de la entrada ")
                                    + entry));
        }
        if (fields.path("unit").isTextual() && fields.path("seq").isIntegralNumber()) {
            String edge = fields.path("unit").asText() + " / " + fields.path("seq").asText();
            lines.add(Markup.text(view.say("Edge ", "Flanco ") + edge));
        }
        people(fields, lines);
    }

    private void people(JsonNode fields, List<Markup> lines) {
        named(fields, "proctorDevice", view.say("Proctor's tablet: ", "Tableta: "), lines);
        named(fields, "otherNumber", view.say("Other number: ", "Otro número: "), lines);
        if (!fields.path("reason").asText("").isEmpty()) {
            String reason = reason(fields.path("reason").asText());
            lines.add(Markup.text(view.say("Reason: ", "Motivo: ") + reason));
        }
        String words = fields.path("words").asText("");
        if (!words.isEmpty()) {
            lines.add(
                    Markup.text(
                            view.say("In their words: “", "En sus palabras: «")
                                    + words
                                    + view.say("”", "»")));
        }
    }

    private static void named(JsonNode fields, String field, String name, List<Markup> lines) {
        if (!fields.path(field).asText("").isEmpty()) {
            lines.add(Markup.text(name + fields.path(field).asText()));
        }
    }

    private String act(String word, JsonNode fields) {
        for (ActKind kind : ActKind.values()) {
            if (kind.word().equals(word)) {
                return kind == ActKind.CALL ? call(fields) : act(kind);
            }
        }
        return word;
    }

    private String call(JsonNode fields) {
        return fields.path("fault").asBoolean()
                ? view.say("called a fault", "señaló una falta")
                : view.say("called a warning", "señaló un aviso");
    }

    // A switch over every kind, so that a new act is given its words here.
    private String act(ActKind kind) {
        return switch (kind) {
            case RELEASE -> view.say("sent onto the course", "dio la salida al recorrido");
            case GIVE_START -> view.say("gave the start signal", "dio la señal de inicio");
            case TAP -> view.say("tapped", "marcó con un toque");
            case CALL -> view.say("called", "señaló");
            case CONFIRM -> view.say("confirmed the split", "confirmó el parcial");
            case CHOOSE_READING -> view.say("chose a reading", "eligió una lectura");
            case VOID_SPLIT -> view.say("made the split void", "anuló el parcial");
            case HAND_TIME -> view.say("gave a time by hand", "dio un tiempo a mano");
            case HOLD_CANDIDATE -> view.say("began a hold", "inició una pausa");
            case RESUME_CANDIDATE -> view.say("ended a hold", "terminó una pausa");
            case HOLD_COURSE -> view.say("held new releases", "detuvo nuevas salidas");
            case RESUME_COURSE -> view.say("allowed releases again", "permitió salidas de nuevo");
            case STOP_ALL -> view.say("stopped everybody", "detuvo a todos");
            case RESTART -> view.say("let the course go on", "reanudó el recorrido");
            case STATION_READY -> view.say("called a station ready", "dio por lista una estación");
            case WITHDRAW -> view.say("recorded a withdrawal", "anotó una retirada");
            case NO_SHOW -> view.say("recorded a no-show", "anotó que no se presentó");
            default -> laterAct(kind);
        };
    }

    private String laterAct(ActKind kind) {
        return switch (kind) {
            case TELL -> view.say("told the result", "comunicó el resultado");
            case HAND_OVER -> view.say("handed over to another proctor", "pasó a otro evaluador");
            case IDENTIFY -> view.say("made a unit blink", "hizo parpadear una unidad");
            case BEGIN_CALIBRATION -> view.say("began a calibration", "inició una calibración");
            case END_CALIBRATION -> view.say("ended a calibration", "terminó una calibración");
            case ADJUST_TRIGGER -> view.say("adjusted a trigger", "ajustó un disparador");
            case BEGIN_PROOF_RUN -> view.say("began a proof run", "inició un recorrido de prueba");
            case PROOF_TAP -> view.say("pressed in a proof run", "pulsó en una prueba");
            case PROOF_SIGNAL -> view.say("asked for the signal", "pidió la señal");
            case SIGN_PROOF_RUN -> view.say("signed a proof run", "firmó un recorrido de prueba");
            case END_PROOF_RUN -> view.say("gave a proof run up", "abandonó una prueba");
            case GO_ON_BY_HAND -> view.say("went on by hand", "siguió a mano");
            case NOTE -> view.say("wrote a note", "escribió una nota");
            case CONFIRM_CLEAN ->
                    view.say("confirmed all clean splits", "confirmó los parciales limpios");
            case STRIKE -> view.say("struck a passage", "descartó un paso");
            case ASSIGN -> view.say("assigned a passage", "asignó un paso");
            case ADD_MARK -> view.say("added a mark", "añadió una marca");
            case WITHDRAW_RULING -> view.say("withdrew a ruling", "retiró una decisión");
            case EQUIPMENT_FAULT ->
                    view.say("called an equipment fault", "señaló un fallo del equipo");
            case STOP_ONE -> view.say("stopped this candidate", "detuvo a este aspirante");
            case SWAP_ORDER -> view.say("swapped the order", "cambió el orden");
            case ACKNOWLEDGE_HEAT -> view.say("acknowledged the heat", "acusó recibo del calor");
            case HAND_READING -> view.say("read the heat by hand", "midió el calor a mano");
            case LIGHTNING_SEEN ->
                    view.say("reported thunder or lightning", "avisó de truenos o rayos");
            case GUST_READ -> view.say("read a gust", "midió una racha");
            case TEAM_AWAY -> view.say("called a team away", "avisó que un equipo se fue");
            case TEAM_BACK -> view.say("called a team back", "avisó que un equipo volvió");
            case CHECKLIST_DONE ->
                    view.say("signed a checklist item", "firmó un punto de la lista");
            case CHECKLIST_OPEN ->
                    view.say(
                            "took a checklist item back",
                            "retiró la firma de un punto de la lista");
            case NOTE_SURFACE ->
                    view.say("noted the ground and the weather", "anotó el suelo y el tiempo");
            case RUN_AGAIN -> view.say("granted a re-run", "concedió repetir el recorrido");
            case RUN_STATION_AGAIN ->
                    view.say("granted a re-run of the station", "concedió repetir la estación");
            default -> throw new IllegalStateException("an act without words: " + kind);
        };
    }

    /** A reason's code in words; anything else as it is. */
    String reason(String code) {
        for (Reason reason : Reason.values()) {
            if (reason.word().equals(code)) {
                return reason(reason);
            }
        }
        return code;
    }

    private String reason(Reason reason) {
        return switch (reason) {
            case SENSOR_FAILED -> view.say("a sensor failed", "falló un sensor");
            case SENSOR_TRIPPED_BY_OTHER ->
                    view.say(
                            "someone or something else tripped the sensor",
                            "otra persona o cosa activó el sensor");
            case REQUIRED_ACT_NOT_DONE ->
                    view.say("a required act was not done", "no se hizo un acto obligatorio");
            case STATION_NOT_READY ->
                    view.say("the station was not ready", "la estación no estaba lista");
            case EQUIPMENT_FAULT -> view.say("equipment fault", "fallo del equipo");
            case WEATHER -> view.say("weather", "tiempo atmosférico");
            case MEDICAL -> view.say("medical", "médico");
            case STAFFING -> view.say("staffing", "falta de personal");
            case COURSE_BLOCKED -> view.say("the course was blocked", "recorrido bloqueado");
            case OTHER -> view.say("other", "otro");
        };
    }
}
