package yardclock.app.records.dossier.page;

import yardclock.app.json.Json;
import yardclock.app.records.dossier.Timeline.FactLine;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Spans;
import yardclock.core.fact.FactKind;
import yardclock.core.run.Mark;

import java.util.ArrayList;
import java.util.List;

/** What the gateway concluded, in words. */
final class FactWords {
    private final View view;

    FactWords(View view) {
        this.view = view;
    }

    Markup of(FactLine fact) {
        List<Markup> lines = new ArrayList<>();
        lines.add(Markup.strong(kind(fact.kind())));
        if (!fact.where().isEmpty()) {
            String point =
                    fact.point().isEmpty() ? "" : ": " + view.point(fact.where(), fact.point());
            lines.add(Markup.text(view.station(fact.where()) + point));
        }
        if (fact.micros() >= 0) {
            lines.add(view.instant(fact.micros(), fact.lowerMicros(), fact.upperMicros()));
        }
        if (fact.valueMicros() > 0) {
            lines.add(Markup.text(Spans.text(fact.valueMicros())));
        }
        if (!fact.words().isEmpty() && !isSource(fact.words())) {
            lines.add(Markup.small(fact.words()));
        }
        return Markup.lines(lines);
    }

    /** How a mark was made is said with the mark. */
    private static boolean isSource(String words) {
        for (Mark.Source source : Mark.Source.values()) {
            if (source.name().equals(words)) {
                return true;
            }
        }
        return false;
    }

    String kind(String word) {
        if ("go-on-by-hand".equals(word)) {
            return view.say("Went on by hand", "Se siguió a mano");
        }
        for (FactKind kind : FactKind.values()) {
            if (Json.word(kind).equals(word)) {
                return kind(kind);
            }
        }
        return word;
    }

    private String kind(FactKind kind) {
        return switch (kind) {
            case RELEASED -> view.say("Sent onto the course", "Salida al recorrido");
            case MARK_PROPOSED -> view.say("Mark seen, provisional", "Marca vista, provisional");
            case MARK_CHANGED -> view.say("Mark read otherwise", "Marca leída de otro modo");
            case MARK_SETTLED ->
                    view.say("Mark by final clock values", "Marca según los relojes, valor final");
            case SPLIT_PROPOSED -> view.say("Split proposed", "Parcial propuesto");
            case SPLIT_CONFIRMED -> view.say("Split confirmed", "Parcial confirmado");
            case SPLIT_VOID -> view.say("Split void", "Parcial nulo");
            case SPLIT_BY_HAND -> view.say("Split by hand", "Parcial a mano");
            case RULING_WITHDRAWN -> view.say("Ruling withdrawn", "Decisión retirada");
            case OFFICIAL_TIME -> view.say("Official time", "Tiempo oficial");
            case OUTCOME -> view.say("Outcome", "Resultado");
            case TOLD -> view.say("Result told", "Resultado comunicado");
            case HOLD_IN -> view.say("Hold began", "Empezó una pausa");
            case HOLD_OUT -> view.say("Hold ended", "Terminó una pausa");
            case COURSE_HELD -> view.say("New releases held", "Nuevas salidas detenidas");
            case COURSE_RESUMED ->
                    view.say("Releases allowed again", "Salidas permitidas de nuevo");
            case STOPPED -> view.say("Everybody stopped", "Todos detenidos");
            case RESTARTED -> view.say("The course goes on", "El recorrido sigue");
            case STATION_IN_USE -> view.say("Station in use", "Estación en uso");
            case STATION_TO_BE_RESET -> view.say("Station to be reset", "Estación por reponer");
            case STATION_READY -> view.say("Station ready", "Estación lista");
            default -> ofUnits(kind);
        };
    }

    private String ofUnits(FactKind kind) {
        return switch (kind) {
            case UNIT_BOOTED -> view.say("Unit started anew", "La unidad arrancó");
            case UNIT_SILENT -> view.say("Unit silent", "Unidad en silencio");
            case UNIT_BACK -> view.say("Unit heard again", "Unidad oída de nuevo");
            case LATE_EVIDENCE -> view.say("Late evidence", "Lectura tardía");
            case PASSAGE_UNASSIGNED -> view.say("A passage that is nobody's", "Un paso de nadie");
            case WIDE_BOUND ->
                    view.say(
                            "Interval wider than the plan allows",
                            "Intervalo mayor que lo previsto");
            case CALIBRATION_BEGUN -> view.say("Calibration begun", "Calibración iniciada");
            case CALIBRATED -> view.say("Unit calibrated", "Unidad calibrada");
            case CALIBRATION_BROKEN_OFF ->
                    view.say("Calibration broken off", "Calibración interrumpida");
            case CALIBRATION_ENDED -> view.say("Calibration ended", "Calibración terminada");
            case PROOF_RUN_BEGUN -> view.say("Proof run begun", "Recorrido de prueba iniciado");
            case PROOF_RUN_SIGNED -> view.say("Proof run signed", "Recorrido de prueba firmado");
            case PROOF_RUN_ENDED -> view.say("Proof run over", "Recorrido de prueba terminado");
            case TRIGGER_ADJUSTED -> view.say("Trigger adjusted", "Disparador ajustado");
            case STOP_BUTTON -> view.say("Wired stop button", "Botón de parada");
            case ALARM -> view.say("Warning", "Advertencia");
            case ALARM_OVER -> view.say("Warning over", "Fin de la advertencia");
            default -> Json.word(kind);
        };
    }
}
