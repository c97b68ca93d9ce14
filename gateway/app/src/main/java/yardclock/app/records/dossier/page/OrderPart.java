package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Timeline.EdgeLine;
import yardclock.app.records.dossier.Timeline.FactLine;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;

import java.util.List;

/** What was concluded in the order in which it was, and every raw edge. */
final class OrderPart {
    private final View view;
    private final Paper paper;

    OrderPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
    }

    void write() {
        concluded();
        edges();
    }

    private void concluded() {
        paper.section(view.say("What was concluded, in order", "Lo concluido, en orden"));
        paper.paragraph(
                view.say(
                        "By the program, from the entry named, at the time it was kept. What it"
                                + " concluded first may have changed with a later entry.",
                        "Por el programa, a partir de la entrada citada, cuando se guardó. Lo que"
                                + " concluyó primero pudo cambiar con una entrada posterior."));
        FactWords words = new FactWords(view);
        paper.table(
                view.say("Concluded", "Concluido"),
                List.of(
                        view.say("Entry", "Entrada"),
                        view.say("When it was concluded", "Cuándo se concluyó"),
                        view.say(
                                "What, and the instant it is about",
                                "Qué, y el instante del que trata")),
                view.timeline().concluded().stream().map(fact -> fact(words, fact)).toList());
    }

    private List<Markup> fact(FactWords words, FactLine fact) {
        return List.of(
                view.entry(fact.entry()),
                Markup.text(view.instants.at(fact.gatewayMicros())),
                words.of(fact));
    }

    private void edges() {
        paper.section(view.say("Raw edges", "Flancos"));
        paper.paragraph(
                view.say(
                        "Every change of a sensor that belongs to this attempt's turns, as the"
                                + " field unit stamped it, and what became of it. 1 means closed,"
                                + " blocked or pressed; 0 open, clear or released. The counter is"
                                + " the unit's own, in microseconds since it started.",
                        "Cada cambio de un sensor que pertenece a los turnos de este intento, como"
                                + " lo selló la unidad, y qué fue de él. 1 es cerrado, cubierto o"
                                + " pulsado; 0 abierto, libre o suelto. El contador es el de la"
                                + " unidad, en microsegundos desde que arrancó."));
        paper.table(
                view.say("Raw edges", "Flancos"),
                List.of(
                        view.say("Entry", "Entrada"),
                        view.say("Instant and limits", "Instante y límites"),
                        view.say("Station", "Estación"),
                        view.say("Sensor", "Sensor"),
                        view.say("State", "Estado"),
                        view.say("Number and counter", "Número y contador"),
                        view.say("What became of it", "Qué fue de él")),
                view.timeline().edges().stream().map(this::edge).toList());
    }

    private List<Markup> edge(EdgeLine edge) {
        return List.of(
                view.entry(edge.entry()),
                view.instant(edge.micros(), edge.lowerMicros(), edge.upperMicros()),
                Markup.text(view.station(edge.station())),
                Markup.lines(
                        Markup.text(sensor(edge)),
                        Markup.small(edge.unit() + " / " + edge.sensor())),
                Markup.text(Integer.toString(edge.state())),
                Markup.lines(
                        Markup.text(Long.toString(edge.seq())),
                        Markup.small(Long.toString(edge.tick()))),
                became(edge));
    }

    private String sensor(EdgeLine edge) {
        return view.plan()
                .sensor(new SensorRef(edge.unit(), edge.sensor()))
                .map(SensorPlan::name)
                .map(view.language::of)
                .orElse("");
    }

    private Markup became(EdgeLine edge) {
        Markup why = Markup.text(view.language.of(edge.why()));
        return edge.mark().isEmpty()
                ? why
                : Markup.lines(Markup.strong(view.point(edge.station(), edge.mark())), why);
    }
}
