package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.core.board.ClockSheet;
import yardclock.core.engine.Engine.View;

import java.util.Optional;

/** Hands out one field unit's clock as a picture, drawn when it is asked for. */
final class ClockDesk {
    private final WebPorts ports;
    private final Refusals refusals;

    ClockDesk(WebPorts ports, Refusals refusals) {
        this.ports = ports;
        this.refusals = refusals;
    }

    void clock(Context request) {
        String unit = request.pathParam("unit");
        if (!isPlanned(unit)) {
            refusals.refuse(request, WebRefusal.NOT_FOUND, "The plan has no such field unit.");
            return;
        }
        Optional<Optional<ClockSheet>> answer =
                Waiting.forAnswer(
                        ports.questions().ask(engine -> engine.clock(now(), unit)),
                        WebLimits.ANSWER_SECONDS);
        if (answer.isEmpty() || answer.get().isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else {
            Replies.json(request, answer.get().get());
        }
    }

    /** The lane is asked only for what there can be. */
    private boolean isPlanned(String unit) {
        return ports.documents()
                .plan()
                .get()
                .flatMap(frozen -> frozen.plan().fieldUnit(unit))
                .isPresent();
    }

    private View now() {
        return new View(ports.clock().now().micros(), ports.troubles().words());
    }
}
