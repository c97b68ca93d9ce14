package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Further.CallLine;
import yardclock.app.records.dossier.Further.HoldLine;
import yardclock.app.records.dossier.Timeline.RulingLine;
import yardclock.app.records.paper.Markup;
import yardclock.app.records.paper.Paper;
import yardclock.app.records.paper.Spans;

import java.util.ArrayList;
import java.util.List;

/** What people did: rulings and taps, those that do not stand any more among them; holds; calls. */
final class RulingsPart {
    private final View view;
    private final Paper paper;
    private final ActWords acts;

    RulingsPart(View view, Paper paper) {
        this.view = view;
        this.paper = paper;
        this.acts = new ActWords(view);
    }

    void write() {
        holds();
        calls();
        rulings();
    }

    private void rulings() {
        paper.section(view.say("Rulings and taps", "Decisiones y toques"));
        paper.paragraph(
                view.say(
                        "Nothing here was edited: a later ruling supersedes or withdraws an earlier"
                            + " one, and both stand here. The device's own clock counts from when"
                            + " its page was opened; where it was compared with the gateway's, the"
                            + " tap's instant follows from it. A revision counts the changes of"
                            + " what the screen could show of the attempt.",
                        "Nada se editó: una decisión posterior sustituye o retira otra anterior, y"
                            + " ambas figuran aquí. El reloj del equipo cuenta desde que se abrió"
                            + " su página; donde se comparó con el de la central, el instante del"
                            + " toque se deduce de él. La revisión cuenta los cambios de lo que la"
                            + " pantalla podía mostrar del intento."));
        paper.table(
                view.say("Rulings and taps", "Decisiones y toques"),
                List.of(
                        view.say("Entry", "Entrada"),
                        view.say("When", "Cuándo"),
                        view.say("Who", "Quién"),
                        view.say("What", "Qué"),
                        view.say("On the screen", "En la pantalla"),
                        view.say("What became of it", "Qué fue de ello")),
                view.timeline().rulings().stream().map(this::ruling).toList());
    }

    private List<Markup> ruling(RulingLine ruling) {
        return List.of(
                view.entry(ruling.entry()),
                when(ruling),
                Markup.lines(
                        Markup.text(ruling.person()),
                        Markup.small(role(ruling.role())),
                        Markup.small(view.say("device ", "equipo ") + ruling.device())),
                acts.of(ruling.act(), ruling.what()),
                screen(ruling),
                status(ruling));
    }

    private Markup when(RulingLine ruling) {
        List<Markup> lines = new ArrayList<>();
        lines.add(Markup.text(view.instants.at(ruling.receivedMicros())));
        lines.add(Markup.small(view.say("received by the gateway", "recibido por la central")));
        if (ruling.gatewayMicros() != ruling.receivedMicros()) {
            String kept = view.say("kept ", "guardado ");
            lines.add(Markup.small(kept + view.instants.at(ruling.gatewayMicros())));
        }
        lines.add(
                Markup.small(
                        ruling.deviceMicros() == 0
                                ? view.say("the device gave no time", "el equipo no dio hora")
                                : view.say("device clock ", "reloj del equipo ")
                                        + Spans.text(ruling.deviceMicros())));
        return Markup.lines(lines);
    }

    private String role(String role) {
        return switch (role) {
            case "coordinator" -> view.say("coordinator", "coordinación");
            case "technician" -> view.say("timing technician", "técnico de tiempos");
            case "proctor" -> view.say("proctor", "evaluador");
            case "crew" -> view.say("station crew", "equipo de estación");
            case "safety" -> view.say("safety officer", "oficial de seguridad");
            default -> role;
        };
    }

    private Markup screen(RulingLine ruling) {
        if (ruling.shownMicros().isEmpty()) {
            return Markup.text(
                    ruling.basis() < 0
                            ? view.say("not said", "no consta")
                            : view.say("revision ", "revisión ") + ruling.basis());
        }
        String shown =
                String.join(
                        view.say(" or ", " o "),
                        ruling.shownMicros().stream().map(Spans::text).toList());
        return Markup.lines(
                Markup.text(view.say("split ", "parcial ") + shown),
                Markup.small(view.say("revision ", "revisión ") + ruling.basis()));
    }

    private Markup status(RulingLine ruling) {
        if (!ruling.refusal().isEmpty()) {
            return Markup.lines(
                    Markup.strong(view.say("REFUSED", "RECHAZADO")),
                    Markup.small(view.say("code ", "código ") + ruling.refusal()));
        }
        List<Markup> lines = new ArrayList<>();
        switch (ruling.status()) {
            case "superseded" -> {
                lines.add(Markup.strong(view.say("SUPERSEDED", "SUSTITUIDA")));
                lines.add(by(ruling));
            }
            case "withdrawn" -> {
                lines.add(Markup.strong(view.say("WITHDRAWN", "RETIRADA")));
                lines.add(by(ruling));
            }
            case "standing" -> lines.add(Markup.text(view.say("stands", "vigente")));
            default -> lines.add(Markup.text(view.say("taken", "aceptado")));
        }
        if (ruling.supersedes() >= 0) {
            String text = view.say("in place of entry ", "en lugar de la entrada ");
            lines.add(Markup.small(text + ruling.supersedes()));
        }
        return Markup.lines(lines);
    }

    private Markup by(RulingLine ruling) {
        return Markup.small(view.say("by entry ", "por la entrada ") + ruling.endedBy());
    }

    private void holds() {
        paper.section(view.say("Holds", "Pausas"));
        if (view.further().holds().isEmpty()) {
            paper.paragraph(view.say("There was none.", "No hubo ninguna."));
            return;
        }
        paper.table(
                view.say("Holds", "Pausas"),
                List.of(
                        view.say("From", "Desde"),
                        view.say("To", "Hasta"),
                        view.say("As pressed", "Según los toques"),
                        view.say("Reason", "Motivo")),
                view.further().holds().stream().map(this::hold).toList());
    }

    private List<Markup> hold(HoldLine hold) {
        return List.of(
                view.instant(hold.inMicros(), hold.inLowerMicros(), hold.inUpperMicros()),
                view.instant(hold.outMicros(), hold.outLowerMicros(), hold.outUpperMicros()),
                Markup.text(Spans.text(hold.micros())),
                Markup.text(acts.reason(hold.reason())));
    }

    private void calls() {
        paper.section(view.say("Warnings and faults", "Avisos y faltas"));
        if (view.further().calls().isEmpty()) {
            paper.paragraph(view.say("None was called.", "No se señaló ninguno."));
            return;
        }
        paper.table(
                view.say("Warnings and faults", "Avisos y faltas"),
                List.of(
                        view.say("Pressed", "Toque"),
                        view.say("Station", "Estación"),
                        view.say("Call", "Señal"),
                        view.say("Criterion", "Criterio"),
                        view.say("By", "Por")),
                view.further().calls().stream().map(this::call).toList());
    }

    private List<Markup> call(CallLine call) {
        return List.of(
                Markup.text(view.instants.at(call.micros())),
                Markup.text(view.station(call.station())),
                Markup.strong(
                        call.fault() ? view.say("fault", "falta") : view.say("warning", "aviso")),
                Markup.text(view.criterion(call.station(), call.criterion())),
                Markup.text(call.person()));
    }
}
