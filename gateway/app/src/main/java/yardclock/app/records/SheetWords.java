package yardclock.app.records;

import static java.util.stream.Collectors.joining;

import yardclock.core.board.HeatView;
import yardclock.core.course.Condition;
import yardclock.core.course.Text;
import yardclock.core.course.TimingRules.UndecidedRule;
import yardclock.core.run.Elapsed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The documents' fixed words in both languages. */
public final class SheetWords {
    private static final Map<String, Text> OUTCOMES = new TreeMap<>();
    private static final Map<String, Text> STATES = new TreeMap<>();

    private static final List<String> HEAT =
            List.of("normal", "precaución", "más descanso", "pausa de nuevas salidas", "alto");

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

    /** Conditions as they were noted of a station; where nobody had said anything, that is said. */
    public static Text conditions(List<Condition> conditions) {
        if (conditions.isEmpty()) {
            return new Text("not noted", "sin anotar");
        }
        return new Text(
                conditions.stream().map(one -> condition(one).en()).collect(joining(", ")),
                conditions.stream().map(one -> condition(one).es()).collect(joining(", ")));
    }

    private static Text condition(Condition condition) {
        return switch (condition) {
            case DRY -> new Text("dry", "seco");
            case WET -> new Text("wet", "mojado");
            case ICE -> new Text("ice", "hielo");
            case GLARE -> new Text("glare", "deslumbramiento");
            case GUST -> new Text("gusts", "ráfagas");
        };
    }

    public static Text outcome(String word) {
        return OUTCOMES.getOrDefault(word, new Text(word, word));
    }

    public static Text state(String word) {
        return STATES.getOrDefault(word, new Text(word, word));
    }

    public static Text decision(String word) {
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

    /** What an interval consists of, in milliseconds; parts that are nothing are left out. */
    public static Text parts(Elapsed.Parts parts) {
        List<String> en = new ArrayList<>();
        List<String> es = new ArrayList<>();
        part(parts.clockMicros(), "clocks", "relojes", en, es);
        part(parts.readingMicros(), "reading", "lectura", en, es);
        part(parts.responseMicros(), "sensor response", "respuesta del sensor", en, es);
        part(parts.handMicros(), "by hand", "a mano", en, es);
        part(parts.holdMicros(), "ends of holds", "extremos de pausas", en, es);
        return new Text(String.join(" + ", en), String.join(" + ", es));
    }

    private static void part(
            long micros, String en, String es, List<String> english, List<String> spanish) {
        if (micros > 0) {
            String millis = BigDecimal.valueOf(micros, 3).setScale(1, RoundingMode.UP) + " ms ";
            english.add(millis + en);
            spanish.add(millis + es);
        }
    }

    /** The plan's rule that led from the interval to the decision. */
    public static Text rule(String decision, UndecidedRule undecided) {
        if (decision.isEmpty()) {
            return new Text("–", "–");
        }
        if (!decision.equals("undecided")) {
            return new Text(
                    "The whole interval lies on one side of the cut-off.",
                    "Todo el intervalo está a un lado del límite.");
        }
        return switch (undecided) {
            case CANDIDATES_BENEFIT ->
                    new Text(
                            "The cut-off lies inside the interval: the plan decides for the"
                                    + " candidate.",
                            "El límite está dentro del intervalo: el plan decide a favor del"
                                    + " aspirante.");
            case REVIEW ->
                    new Text(
                            "The cut-off lies inside the interval: the plan asks for a review.",
                            "El límite está dentro del intervalo: el plan pide una revisión.");
        };
    }

    /** The heat watch's level in words. */
    static Text heat(HeatView heat) {
        return heat.level() < 0 || heat.level() >= HEAT.size()
                ? new Text(heat.word(), "desconocido")
                : new Text(heat.word(), HEAT.get(heat.level()));
    }
}
