package yardclock.app.records;

import yardclock.core.board.HeatView;
import yardclock.core.course.Criterion;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.course.Text;
import yardclock.core.course.TimingRules.Rounding;
import yardclock.core.result.DisplayedTime;
import yardclock.core.result.Result;
import yardclock.core.result.Result.CallLine;
import yardclock.core.result.Result.SplitLine;
import yardclock.core.run.Elapsed;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/**
 * The sheet from which one candidate is told their result: one A4 page to print, English and
 * Spanish side by side, and no script.
 *
 * <p>It names the number and never the person. The candidate signs that they received it, not that
 * they agree.
 */
final class TellingSheet {
    private static final DateTimeFormatter WALL =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final DaySheet day;
    private final Result result;
    private final ExamPlan plan;
    private final ZoneId zone;
    private final Html html = new Html();

    private TellingSheet(DaySheet day, Result result, ZoneId zone) {
        this.day = day;
        this.result = result;
        this.plan = day.frozen().plan();
        this.zone = zone;
    }

    static String of(DaySheet day, Result result, ZoneId zone) {
        TellingSheet sheet = new TellingSheet(day, result, zone);
        sheet.html.raw("<!doctype html>").raw("<html lang=\"en\"><head><meta charset=\"utf-8\">");
        sheet.html.element("title", "Result of number " + result.number());
        sheet.html.raw(SheetStyle.STYLE).raw("</head><body>");
        sheet.heading();
        sheet.outcome();
        sheet.splits();
        sheet.calls();
        sheet.conditions();
        sheet.proof();
        sheet.next();
        sheet.signature();
        return sheet.html.raw("</body></html>").toString();
    }

    private void heading() {
        html.raw("<header>");
        both(
                "h1",
                "Result of number " + result.number(),
                "Resultado del número " + result.number());
        both("p", plan.name().title().en(), plan.name().title().es());
        html.element("p", plan.name().department() + " · " + plan.name().yard());
        html.element("p class=\"small\"", planLine());
        html.raw("</header>");
    }

    private String planLine() {
        Instant made = Instant.EPOCH.plus(day.wallMicros(), ChronoUnit.MICROS);
        return plan.name().id()
                + " v"
                + plan.name().version()
                + " · "
                + day.frozen().sha256()
                + " · "
                + WALL.format(made.atZone(zone));
    }

    private void outcome() {
        Text outcome = SheetWords.outcome(result.outcome());
        Text decision = SheetWords.decision(result.decision());
        html.raw("<table class=\"facts\">");
        fact("Outcome", "Resultado", outcome);
        fact("Official time", "Tiempo oficial", same(dash(result.display())));
        fact("Lies between", "Está entre", same(interval()));
        fact("Its width consists of", "Su anchura se compone de", parts());
        fact("By final clock values", "Según los relojes, valor final", settled());
        fact("Cut-off", "Límite", same(cutOff()));
        fact("Against the cut-off", "Respecto al límite", decision);
        fact("Rule applied", "Regla aplicada", rule());
        fact(
                "Credited holds",
                "Pausas acreditadas",
                same(day.display(result.creditedHoldMicros())));
        html.raw("</table>");
        both(
                "p class=\"small\"",
                "Official time = finish of the last station − start of the first − credited holds."
                        + " Provisional until the day is sealed. Times are minutes:seconds.",
                "Tiempo oficial = final de la última estación − inicio de la primera − pausas"
                        + " acreditadas. Provisional hasta el cierre del día. Tiempos en"
                        + " minutos:segundos.");
    }

    private Text rule() {
        return SheetWords.rule(result.decision(), plan.timing().undecided());
    }

    private String interval() {
        return result.officialMicros() < 0
                ? "–"
                : between(result.lowerMicros(), result.upperMicros());
    }

    private Text parts() {
        Elapsed.Parts parts = result.parts();
        return parts == null ? same("–") : SheetWords.parts(parts);
    }

    /** Shown beside the time that was ruled on, which it does not change. */
    private Text settled() {
        Result.Settled settled = result.settled();
        if (settled == null) {
            return new Text("still open", "aún abierto");
        }
        String time = DisplayedTime.text(Math.max(0, settled.micros()), Rounding.HALF_UP, 1_000);
        Text decision = SheetWords.decision(settled.decision());
        return new Text(time + ": " + decision.en(), time + ": " + decision.es());
    }

    private String cutOff() {
        return switch (plan.timing().comparison()) {
                    case AT_MOST -> "≤ ";
                    case BELOW -> "< ";
                }
                + day.display(plan.timing().cutOffMicros());
    }

    private void splits() {
        both("h2", "Splits", "Tiempos por estación");
        html.raw("<table>");
        html.row(
                "th",
                "Station · Estación",
                "Split · Parcial",
                "Lies between · Está entre",
                "Automatic · Automático",
                "By hand · A mano",
                "State · Estado",
                "Why · Por qué");
        for (SplitLine split : result.splits()) {
            splitRow(split);
        }
        html.raw("</table>");
    }

    private void splitRow(SplitLine split) {
        Text name = plan.station(split.station()).map(Station::name).orElse(same(split.station()));
        Text state = SheetWords.state(split.state());
        boolean timed = split.splitMicros() >= 0;
        html.row(
                "td",
                twice(name),
                dash(day.display(split.splitMicros())),
                timed ? between(split.lowerMicros(), split.upperMicros()) : "–",
                dash(day.display(split.automaticMicros())),
                dash(day.display(split.handMicros())),
                twice(state),
                twice(why(split)));
    }

    /** The finish's words stand in both languages; what a proctor wrote stands as written. */
    private Text why(SplitLine split) {
        return plan.station(split.station())
                .map(station -> station.finish().words())
                .filter(words -> words.en().equals(split.why()))
                .orElse(same(split.why()));
    }

    private void calls() {
        both("h2", "Warnings and faults", "Avisos y faltas");
        if (result.calls().isEmpty()) {
            both("p", "None called.", "Ninguno.");
            return;
        }
        html.raw("<table>");
        html.row("th", "Station · Estación", "Call · Aviso", "Criterion · Criterio", "Proctor");
        for (CallLine call : result.calls()) {
            html.row(
                    "td",
                    twice(
                            plan.station(call.station())
                                    .map(Station::name)
                                    .orElse(same(call.station()))),
                    call.fault() ? "fault · falta" : "warning · aviso",
                    twice(criterion(call)),
                    call.proctor());
        }
        html.raw("</table>");
    }

    private Text criterion(CallLine call) {
        return plan.station(call.station())
                .flatMap(station -> station.criterion(call.criterion()))
                .map(Criterion::words)
                .orElse(same(call.criterion()));
    }

    private void conditions() {
        HeatView heat = day.heat();
        Text level = SheetWords.heat(heat);
        ground();
        both("h2", "Conditions when this sheet was made", "Condiciones al hacer esta hoja");
        String index =
                heat.heatIndexDeciFahrenheit() < 0
                        ? "–"
                        : heat.heatIndexDeciFahrenheit() / 10
                                + "."
                                + heat.heatIndexDeciFahrenheit() % 10
                                + " °F";
        both(
                "p",
                "Heat: " + level.en() + ", index " + index + " (" + heat.method() + ")",
                "Calor: " + level.es() + ", índice " + index + " (" + heat.method() + ")");
    }

    /** As it was noted of each station when it was begun; the first is the attempt's start. */
    private void ground() {
        List<SplitLine> begun =
                result.splits().stream().filter(split -> split.startMicros() >= 0).toList();
        if (begun.isEmpty()) {
            return;
        }
        both(
                "h2",
                "Ground and weather when each station was begun",
                "Suelo y tiempo al empezar cada estación");
        if (begun.stream().allMatch(split -> split.conditions().isEmpty())) {
            both("p", "Nothing was noted.", "No se anotó nada.");
            return;
        }
        html.raw("<table class=\"facts\">");
        for (SplitLine split : begun) {
            Text name =
                    plan.station(split.station()).map(Station::name).orElse(same(split.station()));
            fact(name.en(), name.es(), SheetWords.conditions(split.conditions()));
        }
        html.raw("</table>");
    }

    private void proof() {
        both("h2", "Proof run of the equipment", "Recorrido de prueba del equipo");
        for (Text line : ProofLines.of(day.proofs(), plan, zone)) {
            both("p class=\"small\"", line.en(), line.es());
        }
    }

    private void next() {
        both("h2", "What comes next", "Qué sigue");
        both(
                "p",
                "Ask the coordinator what comes next, how to appeal and until when.",
                "Pregunte al coordinador qué sigue, cómo apelar y hasta cuándo.");
        both("h2", "Your own statement", "Su propia declaración");
        html.raw("<div class=\"lines\"></div>");
    }

    private void signature() {
        html.raw("<table class=\"sign\">");
        html.row(
                "td",
                "Received, not agreed · Recibido, no significa conforme",
                "Date and time · Fecha y hora",
                "Told by · Comunicado por");
        html.raw("</table>");
    }

    private void both(String tag, String en, String es) {
        html.raw("<div class=\"both\"><div>").element(tag, en);
        html.raw("</div><div lang=\"es\">").element(tag, es).raw("</div></div>");
    }

    private void fact(String en, String es, Text value) {
        html.row("td", en, value.en(), es, value.es());
    }

    private static String twice(Text text) {
        return text.en().equals(text.es()) ? text.en() : text.en() + " · " + text.es();
    }

    private static Text same(String text) {
        return new Text(text, text);
    }

    private static String dash(String text) {
        return text.isEmpty() ? "–" : text;
    }

    /** Limits show milliseconds, and each is rounded outwards: the truth still lies between. */
    private static String between(long lowerMicros, long upperMicros) {
        return DisplayedTime.text(Math.max(0, lowerMicros), Rounding.TRUNCATE, 1_000)
                + " … "
                + DisplayedTime.text(Math.max(0, upperMicros), Rounding.UP, 1_000);
    }
}
