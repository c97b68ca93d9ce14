package yardclock.app.records.dossier.page;

import yardclock.app.records.SheetWords;
import yardclock.app.records.dossier.Further.PassageLine;
import yardclock.app.records.dossier.Timeline.ReadingLine;
import yardclock.app.records.dossier.Timeline.TurnLine;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.app.records.paper.Spans;

import java.util.ArrayList;
import java.util.List;

/** The course station by station: splits with limits and reasons, passages, other readings. */
final class StationsPart {
    private final View view;
    private final Paper paper;

    StationsPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
    }

    void write() {
        paper.section(view.say("Stations", "Estaciones"));
        List<TurnLine> turns = view.timeline().turns();
        if (turns.isEmpty()) {
            paper.paragraph(view.say("No station was begun.", "No se empezó ninguna estación."));
            return;
        }
        paper.paragraph(
                view.say(
                        "Each start and finish stands with the earliest and the latest instant it"
                                + " can have been, in small print below it.",
                        "Cada salida y llegada lleva debajo, en letra pequeña, el primer y el"
                                + " último instante en que puede haber sido."));
        paper.table(
                view.say("Splits", "Parciales"),
                List.of(
                        view.say("Station", "Estación"),
                        view.say("Start", "Salida"),
                        view.say("Finish", "Llegada"),
                        view.say("Split and limits", "Parcial y límites"),
                        view.say("State, and how it was found", "Estado, y cómo se halló"),
                        view.say("Ground and weather at the start", "Suelo y tiempo al empezar")),
                turns.stream().map(this::turn).toList());
        passages();
        readings(turns);
    }

    private List<Markup> turn(TurnLine turn) {
        return List.of(
                Markup.text(view.station(turn.station())),
                view.mark(turn.start()),
                view.mark(turn.finish()),
                split(turn),
                Markup.lines(
                        Markup.strong(view.language.of(SheetWords.state(turn.state()))),
                        Markup.text(view.language.of(turn.why()))),
                Markup.text(view.language.of(SheetWords.conditions(turn.conditions()))));
    }

    private Markup split(TurnLine turn) {
        if (turn.splitMicros() < 0) {
            return Markup.text("–");
        }
        List<Markup> lines = new ArrayList<>();
        lines.add(Markup.strong(Spans.text(turn.splitMicros())));
        lines.add(Markup.small(Spans.between(turn.lowerMicros(), turn.upperMicros())));
        if (turn.automaticMicros() >= 0) {
            String automatic = view.say("sensors: ", "sensores: ");
            lines.add(Markup.small(automatic + Spans.text(turn.automaticMicros())));
        }
        if (turn.handMicros() >= 0) {
            String hand = view.say("proctor's taps: ", "toques: ");
            lines.add(Markup.small(hand + Spans.text(turn.handMicros())));
        }
        return Markup.lines(lines);
    }

    private void passages() {
        paper.part(view.say("Passages", "Pasos"));
        paper.paragraph(
                view.say(
                        "A passage is one physical occurrence that a trigger of the plan recognised"
                                + " from raw edges. The trigger's version names the plan's version"
                                + " and how often it was adjusted on the day. Where no passage of a"
                                + " point makes the mark, it rests on another reading of the same"
                                + " edges, or on a person. The edges are listed further below by"
                                + " their entries.",
                        "Un paso es un suceso físico que un disparador del plan reconoció en los"
                            + " flancos. La versión del disparador nombra la del plan y cuántas"
                            + " veces se ajustó ese día. Donde ningún paso de un punto forma la"
                            + " marca, esta se basa en otra lectura de los mismos flancos o en una"
                            + " persona. Los flancos figuran más abajo por su número de entrada."));
        paper.table(
                view.say("Passages", "Pasos"),
                List.of(
                        view.say("Station and point", "Estación y punto"),
                        view.say("Instant and limits", "Instante y límites"),
                        view.say("Makes the mark", "Forma la marca"),
                        view.say("Trigger", "Disparador"),
                        view.say("Lasted", "Duró"),
                        view.say("Entries of its edges", "Entradas de sus flancos")),
                view.further().passages().stream().map(this::passage).toList());
    }

    private List<Markup> passage(PassageLine passage) {
        String lasted = String.join(", ", passage.partsMicros().stream().map(Spans::text).toList());
        return List.of(
                Markup.text(
                        view.station(passage.station())
                                + ": "
                                + view.point(passage.station(), passage.point())),
                view.instant(passage.micros(), passage.lowerMicros(), passage.upperMicros()),
                passage.isMark()
                        ? Markup.strong(view.say("yes", "sí"))
                        : Markup.text(view.say("no", "no")),
                Markup.text(passage.rule()),
                Markup.text(lasted),
                Markup.text(view.entries(passage.edges())));
    }

    private void readings(List<TurnLine> turns) {
        List<List<Markup>> rows = new ArrayList<>();
        for (TurnLine turn : turns) {
            for (ReadingLine reading : turn.readings()) {
                rows.add(reading(turn, reading));
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        paper.part(view.say("How starts and finishes can be read", "Cómo pueden leerse"));
        paper.paragraph(
                view.say(
                        "All plausible readings of each point, the best first.",
                        "Todas las lecturas plausibles de cada punto, la mejor primero."));
        paper.table(
                view.say("Readings", "Lecturas"),
                List.of(
                        view.say("Station and point", "Estación y punto"),
                        view.say("Entry of its edge", "Entrada de su flanco"),
                        view.say("Why", "Por qué")),
                rows);
    }

    private List<Markup> reading(TurnLine turn, ReadingLine reading) {
        String byTap = view.say("none, the tap", "ninguna, el toque");
        return List.of(
                Markup.text(
                        view.station(turn.station())
                                + ": "
                                + view.point(turn.station(), reading.point())),
                reading.entry() < 0 ? Markup.text(byTap) : view.entry(reading.entry()),
                Markup.text(view.language.of(reading.why())));
    }
}
