package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Further.WallLine;
import yardclock.app.records.paper.Language;
import yardclock.app.records.paper.Paper;

import java.util.ArrayList;
import java.util.List;

/** Writes a dossier as one HTML page. What most readers need comes first, raw evidence last. */
public final class DossierPage {
    private DossierPage() {}

    /**
     * @throws IllegalArgumentException when the dossier is of the first version, which says too
     *     little for a page
     */
    public static String of(Contents contents, Language language) {
        if (contents.timeline().further() == null) {
            throw new IllegalArgumentException("a dossier of the first version has no page");
        }
        View view = new View(contents, language);
        String title =
                view.say("Dossier of number ", "Expediente del número ")
                        + contents.timeline().number();
        Paper paper = new Paper(language, title, title + ", " + contents.proof().headSha256());
        new ResultPart(view, paper).write();
        paper.section(view.say("Read this first", "Lea esto primero"));
        paper.caution(cautions(view));
        new StationsPart(view, paper).write();
        new RulingsPart(view, paper).write();
        new SurroundingsPart(view, paper).write();
        new ProofPart(view, paper).write();
        new OrderPart(view, paper).write();
        return paper.html();
    }

    private static List<String> cautions(View view) {
        List<String> said = new ArrayList<>();
        said.add(
                view.say(
                        "This is a record of one attempt as a timing gateway kept it: what sensors"
                                + " said, what the program concluded by the exam plan, and what"
                                + " people ruled. It decides nothing. The plan, the people who"
                                + " signed it and the rules of the place do, and whether and how"
                                + " there is an appeal.",
                        "Este es el registro de un intento como lo guardó una central de tiempos:"
                            + " lo que dijeron los sensores, lo que el programa concluyó según el"
                            + " plan, y lo que decidieron las personas. No decide nada. Deciden el"
                            + " plan, quienes lo firmaron y las normas del lugar, también si hay"
                            + " apelación y cómo."));
        said.add(
                view.say(
                        "It is no legal or medical advice, and no statement about a person's"
                                + " fitness or health. Local codes, medical direction and licensed"
                                + " practice come first.",
                        "No es consejo legal ni médico, ni una afirmación sobre la aptitud o la"
                                + " salud de nadie. Las normas locales, la dirección médica y la"
                                + " práctica autorizada van primero."));
        said.add(
                view.say(
                        "Times of day are given in the zone named above with its distance from UTC."
                                + " They are for reading: they follow what the gateway's wall clock"
                                + " read. Durations never rest on it, but on the clocks of gateway,"
                                + " field units and tablets, compared again and again. Limits are"
                                + " rounded outwards to the millisecond.",
                        "Las horas están en la zona indicada arriba, con su distancia de UTC."
                            + " Sirven para leer: siguen el reloj de pared de la central. Las"
                            + " duraciones nunca dependen de él, sino de los relojes de central,"
                            + " unidades y tabletas, comparados una y otra vez. Los límites se"
                            + " redondean hacia fuera al milisegundo."));
        ofClocks(view, said);
        return said;
    }

    private static void ofClocks(View view, List<String> said) {
        long steps = view.further().walls().size() - 1L;
        if (steps > 0) {
            said.add(
                    view.say(
                                    "On this day the wall clock was set, or the gateway started"
                                            + " anew, this many times: ",
                                    "Ese día el reloj de pared se ajustó, o la central arrancó de"
                                            + " nuevo, estas veces: ")
                            + steps);
        }
        if (view.further().walls().stream().mapToInt(WallLine::speed).anyMatch(s -> s > 1)) {
            said.add(
                    view.say(
                            "This was a demonstration whose time ran faster than real time:"
                                    + " durations are of its own time.",
                            "Fue una demostración cuyo tiempo corría más deprisa que el real: las"
                                    + " duraciones son de su propio tiempo."));
        }
    }
}
