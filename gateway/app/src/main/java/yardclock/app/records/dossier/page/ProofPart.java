package yardclock.app.records.dossier.page;

import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.app.records.paper.Paper.Fact;

import java.util.ArrayList;
import java.util.List;

/** What ties the dossier to the day's journal, how to check it, what that shows and what not. */
final class ProofPart {
    private final View view;
    private final Paper paper;

    ProofPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
    }

    void write() {
        paper.section(
                view.say(
                        "Where this comes from, and how to check it",
                        "De dónde viene, y cómo comprobarlo"));
        paper.paragraph(
                view.say(
                        "The gateway kept everything it was told in a journal, one numbered entry"
                                + " after the other. Each entry is tied to the one before it by a"
                                + " hash (SHA-256), so that none can be changed, moved or taken out"
                                + " without changing the last hash, the head.",
                        "La central guardó todo lo que se le dijo en un diario, una entrada"
                            + " numerada tras otra. Cada entrada está ligada a la anterior por un"
                            + " hash (SHA-256), de modo que ninguna puede cambiarse, moverse o"
                            + " quitarse sin que cambie el último hash, la cabeza."));
        head(view.contents.proof());
        steps();
        claims();
        differences();
    }

    private void head(Contents.Proof proof) {
        paper.facts(
                List.of(
                        new Fact(
                                view.say("Head: last entry", "Cabeza: última entrada"),
                                Markup.text(Long.toString(proof.headEntry()))),
                        new Fact(
                                view.say("Head: its hash", "Cabeza: su hash"),
                                Markup.code(proof.headSha256())),
                        new Fact(
                                view.say(
                                        "Entries that go with it, whole",
                                        "Entradas que lo acompañan, enteras"),
                                Markup.text(Long.toString(proof.kept()))),
                        new Fact(
                                view.say(
                                        "Entries of which only the hash does",
                                        "Entradas de las que solo va el hash"),
                                Markup.text(Long.toString(proof.leftOut())))));
    }

    private void steps() {
        paper.part(view.say("To check it", "Para comprobarlo"));
        paper.steps(
                List.of(
                        Markup.text(
                                view.say(
                                        "Ask for the same dossier as a JSON file. This page alone"
                                            + " proves nothing: it is a rendering of that file.",
                                        "Pida el mismo expediente como archivo JSON. Esta página"
                                            + " sola no prueba nada: es una representación de ese"
                                            + " archivo.")),
                        Markup.joined(
                                Markup.text(
                                        view.say(
                                                "On any computer, without the journal, run",
                                                "En cualquier computadora, sin el diario,"
                                                        + " ejecute")),
                                Markup.code(
                                        "./yardclock dossier --check dossier-"
                                                + view.timeline().number()
                                                + ".json")),
                        Markup.text(
                                view.say(
                                        "Compare the head it prints with the one above, and with"
                                            + " one you know from elsewhere, as on paper signed on"
                                            + " the day.",
                                        "Compare la cabeza que imprime con la de arriba, y con una"
                                            + " que conozca por otra vía, como un papel firmado ese"
                                            + " día."))));
    }

    private void claims() {
        paper.part(view.say("What that shows", "Qué muestra eso"));
        paper.list(
                List.of(
                        view.say(
                                "That exactly these entries stand, unaltered, at these numbers of"
                                        + " the journal with this head.",
                                "Que exactamente estas entradas figuran, inalteradas, con estos"
                                        + " números en el diario con esta cabeza."),
                        view.say(
                                "That the number is on the roster that was frozen for the day.",
                                "Que el número está en la lista fijada para el día."),
                        view.say(
                                "That times, marks and the result follow from these entries by the"
                                        + " stated version of the rules.",
                                "Que tiempos, marcas y resultado se deducen de estas entradas por"
                                        + " la versión indicada de las reglas.")));
        paper.part(view.say("What it does not show", "Qué no muestra"));
        paper.list(doubts());
    }

    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        doubts.add(
                view.say(
                        "That the head is the day's. Somebody who makes up a whole journal can make"
                                + " up its dossiers; only a head witnessed elsewhere tells.",
                        "Que la cabeza sea la de ese día. Quien inventa un diario entero puede"
                            + " inventar sus expedientes; solo lo dice una cabeza atestiguada por"
                            + " otra vía."));
        doubts.add(
                view.say(
                        "That nothing that matters was left out. Whoever holds the whole journal"
                            + " can say that; it holds other people's day and is not handed out.",
                        "Que no se omitiera nada importante. Puede decirlo quien tiene el diario"
                                + " entero; contiene el día de otras personas y no se entrega."));
        doubts.add(
                view.say(
                        "That a field unit, a tablet or a person told the truth, or that a sensor"
                                + " stood where the plan says.",
                        "Que una unidad, una tableta o una persona dijera la verdad, ni que un"
                                + " sensor estuviera donde dice el plan."));
        doubts.add(
                view.say(
                        "That a name is a person's: it is what was typed when the device was"
                                + " enrolled with a one-time code.",
                        "Que un nombre sea el de una persona: es lo que se escribió al registrar el"
                                + " equipo con un código de un solo uso."));
        return doubts;
    }

    private void differences() {
        List<String> differences = view.contents.dossier().differences();
        if (!differences.isEmpty()) {
            paper.caution(
                    List.of(
                            view.say(
                                            "Played with the whole journal, these sections come out"
                                                    + " otherwise, because other people's entries"
                                                    + " matter to them and are not here: ",
                                            "Con el diario entero, estas secciones resultan"
                                                + " distintas, porque dependen de entradas de otras"
                                                + " personas que no están aquí: ")
                                    + String.join(", ", differences)
                                    + "."));
        }
    }
}
