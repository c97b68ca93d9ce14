package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Further.UnitLine;
import yardclock.app.records.dossier.Timeline.ConditionLine;
import yardclock.app.records.dossier.Timeline.FactLine;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.app.records.paper.Spans;

import java.math.BigDecimal;
import java.util.List;

/** How stations, field units and the weather were in the attempt's time. */
final class SurroundingsPart {
    private final View view;
    private final Paper paper;

    SurroundingsPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
    }

    void write() {
        units();
        alarms();
        conditions();
    }

    private void units() {
        paper.section(view.say("Field units in the attempt's time", "Unidades durante el intento"));
        paper.paragraph(
                view.say(
                        "From the release until the time or the outcome was known. A unit gives a"
                                + " sign of life every two seconds; it counts as silent after six."
                                + " One that was silent keeps its edges and sends them later.",
                        "Desde la salida hasta que se supo el tiempo o el resultado. Una unidad da"
                                + " señal cada dos segundos; tras seis se da por silenciosa. La que"
                                + " calla guarda sus flancos y los envía después."));
        paper.table(
                view.say("Field units", "Unidades"),
                List.of(
                        view.say("Unit and place", "Unidad y lugar"),
                        view.say("Stations", "Estaciones"),
                        view.say("Signs of life", "Señales"),
                        view.say("Longest silence", "Silencio más largo"),
                        view.say("Starts", "Arranques"),
                        view.say("Battery, at least", "Batería, al menos"),
                        view.say("Radio, weakest", "Radio, lo más débil"),
                        view.say("Edges waiting, at most", "Flancos en espera, máximo")),
                view.further().units().stream().map(this::unit).toList());
    }

    private List<Markup> unit(UnitLine unit) {
        String stations = String.join(", ", unit.stations().stream().map(view::station).toList());
        return List.of(
                Markup.lines(
                        Markup.text(unit.unit()), Markup.small(view.language.of(unit.place()))),
                Markup.text(stations),
                Markup.text(Long.toString(unit.reports())),
                Markup.text(Spans.text(unit.longestGapMicros())),
                Markup.text(Integer.toString(unit.boots())),
                Markup.text(said(unit.batteryLowestMillivolts(), " mV")),
                Markup.text(said(unit.rssiWeakestDbm(), " dBm")),
                Markup.text(Integer.toString(unit.bufferFullest())));
    }

    private static String said(int value, String unit) {
        return value == 0 ? "–" : value + unit;
    }

    private void alarms() {
        paper.part(
                view.say(
                        "What was said of stations and units",
                        "Lo dicho de estaciones y unidades"));
        paper.paragraph(
                view.say(
                        "Warnings, silence, and who went on by hand. This depends on everybody who"
                                + " was there, so it does not follow from the entries that go with"
                                + " this dossier: it is the word of whoever made it from the whole"
                                + " journal. The program's sentences stand as it wrote them.",
                        "Advertencias, silencios y quién siguió a mano. Depende de todos los que"
                            + " estaban, así que no se deduce de las entradas de este expediente:"
                            + " es palabra de quien lo hizo a partir del diario entero. Las frases"
                            + " del programa figuran como las escribió."));
        List<FactLine> alarms = view.contents.dossier().stationAlarms();
        if (alarms.isEmpty()) {
            paper.paragraph(view.say("Nothing.", "Nada."));
            return;
        }
        FactWords words = new FactWords(view);
        paper.table(
                view.say("Said of stations and units", "Dicho de estaciones y unidades"),
                List.of(
                        view.say("Entry", "Entrada"),
                        view.say("When", "Cuándo"),
                        view.say("What", "Qué")),
                alarms.stream()
                        .map(
                                fact ->
                                        List.of(
                                                view.entry(fact.entry()),
                                                Markup.text(view.instants.at(fact.gatewayMicros())),
                                                words.of(fact)))
                        .toList());
    }

    private void conditions() {
        paper.section(view.say("Air temperature and humidity", "Temperatura y humedad del aire"));
        paper.paragraph(
                view.say(
                        "As the gateway's sensor or the climate station gave them, unjudged. Heat"
                                + " figures advise; local codes and medical direction decide.",
                        "Como las dio el sensor de la central o la estación climática, sin juzgar."
                                + " Las cifras de calor aconsejan; deciden las normas locales y la"
                                + " dirección médica."));
        List<ConditionLine> conditions = view.timeline().conditions();
        if (conditions.isEmpty()) {
            paper.paragraph(view.say("There is no reading.", "No hay lecturas."));
            return;
        }
        paper.table(
                view.say("Readings", "Lecturas"),
                List.of(
                        view.say("Entry", "Entrada"),
                        view.say("When", "Cuándo"),
                        view.say("Air temperature", "Temperatura"),
                        view.say("Relative humidity", "Humedad relativa")),
                conditions.stream().map(this::condition).toList());
    }

    private List<Markup> condition(ConditionLine air) {
        return List.of(
                view.entry(air.entry()),
                Markup.text(view.instants.at(air.gatewayMicros())),
                Markup.text(BigDecimal.valueOf(air.centiCelsius(), 2) + " °C"),
                Markup.text(BigDecimal.valueOf(air.centiPercent(), 2) + " %"));
    }
}
