package yardclock.app.records.dossier.page;

import yardclock.app.records.SheetWords;
import yardclock.app.records.dossier.Further.Official;
import yardclock.app.records.dossier.Timeline.Made;
import yardclock.app.records.dossier.Timeline.Standing;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.app.records.paper.Paper.Fact;
import yardclock.app.records.paper.Spans;
import yardclock.core.course.PlanName;

import java.util.ArrayList;
import java.util.List;

/** Whose dossier it is, by what plan, and how the attempt stands. */
final class ResultPart {
    private final View view;
    private final Paper paper;

    ResultPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
    }

    void write() {
        heading();
        standing();
    }

    private void heading() {
        PlanName name = view.plan().name();
        Made made = view.timeline().made();
        paper.title(
                view.say("Dossier of number ", "Expediente del número ")
                        + view.timeline().number());
        paper.facts(
                List.of(
                        fact(
                                view.say("Exam", "Examen"),
                                view.language.of(name.title())
                                        + ", "
                                        + name.department()
                                        + ", "
                                        + name.yard()),
                        fact(view.say("Day", "Día"), day()),
                        fact(view.say("Time zone", "Zona horaria"), view.contents.zone().getId()),
                        new Fact(
                                view.say("Exam plan", "Plan de examen"),
                                Markup.lines(
                                        Markup.text(
                                                name.id()
                                                        + view.say(", version ", ", versión ")
                                                        + name.version()),
                                        Markup.code("SHA-256 " + made.planSha256()))),
                        fact(
                                view.say("Rules of the program", "Reglas del programa"),
                                view.say("version ", "versión ") + made.rulesVersion())));
    }

    private String day() {
        long first =
                view.timeline().rulings().stream()
                        .mapToLong(r -> r.gatewayMicros())
                        .findFirst()
                        .orElse(0);
        return view.instants.day(first);
    }

    private void standing() {
        paper.section(view.say("Result", "Resultado"));
        Standing standing = view.timeline().standing();
        Official official = view.further().official();
        if (standing == null || official == null) {
            paper.paragraph(view.say("There is none.", "No hay."));
            return;
        }
        String outcome =
                standing.outcome().isEmpty()
                        ? view.say("none yet", "aún ninguno")
                        : view.language.of(SheetWords.outcome(standing.outcome()));
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(view.say("Outcome", "Resultado"), Markup.strong(outcome)));
        if (standing.officialMicros() >= 0) {
            time(standing, official, facts);
        }
        facts.add(
                fact(
                        view.say("Told to the candidate", "Comunicado al aspirante"),
                        standing.told() ? view.say("yes", "sí") : view.say("no", "no")));
        paper.facts(facts);
        paper.paragraph(
                view.say(
                        "The official time is the finish of the last station less the start of the"
                                + " first less credited holds. It is known to lie between the two"
                                + " limits, under the assumptions of the clocks; the figure itself"
                                + " is the best estimate. It is provisional until the day is"
                                + " sealed.",
                        "El tiempo oficial es la llegada de la última estación menos la salida de"
                            + " la primera menos las pausas acreditadas. Se sabe que está entre los"
                            + " dos límites, bajo los supuestos de los relojes; la cifra es la"
                            + " mejor estimación. Es provisional hasta el cierre del día."));
    }

    private void time(Standing standing, Official official, List<Fact> facts) {
        facts.add(
                fact(
                        view.say("Official time, as displayed", "Tiempo oficial, como se muestra"),
                        official.display()));
        facts.add(
                fact(
                        view.say("It lies between", "Está entre"),
                        Spans.between(standing.lowerMicros(), standing.upperMicros())));
        if (official.parts() != null) {
            facts.add(
                    fact(
                            view.say("That width consists of", "Esa anchura se compone de"),
                            view.language.of(SheetWords.parts(official.parts()))));
        }
        facts.add(fact(view.say("Cut-off", "Límite"), cutOff()));
        facts.add(
                fact(
                        view.say("Against the cut-off", "Respecto al límite"),
                        view.language.of(SheetWords.decision(standing.decision()))));
        facts.add(
                fact(
                        view.say("Rule applied", "Regla aplicada"),
                        view.language.of(
                                SheetWords.rule(
                                        standing.decision(), view.plan().timing().undecided()))));
        facts.add(
                fact(
                        view.say("Credited holds", "Pausas acreditadas"),
                        Spans.text(standing.creditedHoldMicros())));
        facts.add(
                fact(
                        view.say("By final clock values", "Según los relojes, valor final"),
                        settled(official)));
    }

    private String cutOff() {
        String comparison =
                switch (view.plan().timing().comparison()) {
                    case AT_MOST -> view.say("at most ", "como máximo ");
                    case BELOW -> view.say("below ", "menos de ");
                };
        return comparison + Spans.text(view.plan().timing().cutOffMicros());
    }

    private String settled(Official official) {
        return official.settled() == null
                ? view.say("still open", "aún abierto")
                : Spans.text(official.settled().micros())
                        + " ("
                        + Spans.between(
                                official.settled().lowerMicros(), official.settled().upperMicros())
                        + ")";
    }

    private static Fact fact(String name, String value) {
        return new Fact(name, Markup.text(value));
    }
}
