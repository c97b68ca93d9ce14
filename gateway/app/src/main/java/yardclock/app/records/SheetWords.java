package yardclock.app.records;

import yardclock.core.course.Text;

import java.util.Map;
import java.util.TreeMap;

/** The telling sheet's fixed words in both languages. */
final class SheetWords {
    private static final Map<String, Text> OUTCOMES = new TreeMap<>();
    private static final Map<String, Text> STATES = new TreeMap<>();

    static {
        outcome("passed", "Passed", "Aprobado");
        outcome("failed-time", "Failed: time", "No aprobado: tiempo");
        outcome("failed-criterion", "Failed: criterion", "No aprobado: criterio");
        outcome("undecided", "Undecided: goes to review", "Sin decidir: pasa a revisión");
        outcome("withdrawn", "Withdrawn", "Retirado");
        outcome("medical-stop", "Medical stop", "Parada médica");
        outcome(
                "safety-stop",
                "Stopped by the safety officer",
                "Parada por el oficial de seguridad");
        outcome("disqualified", "Disqualified: conduct", "Descalificado: conducta");
        outcome("void-re-run", "Void, to be re-run", "Nulo, se repetirá");
        outcome("no-show", "Did not come", "No se presentó");
        outcome("not-admitted", "Not admitted", "No admitido");
        outcome("deferred", "Deferred", "Aplazado");
        state("proposed", "proposed", "propuesto");
        state("ambiguous", "ambiguous", "ambiguo");
        state("incomplete", "incomplete", "incompleto");
        state("confirmed", "confirmed", "confirmado");
        state("void", "void", "nulo");
        state("by-hand", "by hand", "a mano");
    }

    private SheetWords() {}

    private static void outcome(String word, String en, String es) {
        OUTCOMES.put(word, new Text(en, es));
    }

    private static void state(String word, String en, String es) {
        STATES.put(word, new Text(en, es));
    }

    static Text outcome(String word) {
        return OUTCOMES.getOrDefault(word, new Text(word, word));
    }

    static Text state(String word) {
        return STATES.getOrDefault(word, new Text(word, word));
    }

    static Text decision(String word) {
        return switch (word) {
            case "within" -> new Text("within the cut-off", "dentro del límite");
            case "over" -> new Text("over the cut-off", "por encima del límite");
            case "undecided" ->
                    new Text(
                            "within the timing uncertainty of the cut-off",
                            "dentro de la incertidumbre de la medición respecto al límite");
            default -> new Text("–", "–");
        };
    }
}
