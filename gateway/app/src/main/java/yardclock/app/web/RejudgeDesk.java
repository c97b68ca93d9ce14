package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.core.course.GuardTimes;
import yardclock.core.ruling.Rejudgement;

import java.io.IOException;
import java.util.Optional;

/**
 * Says what other guards of a trigger would have found of today's turns. The lane is asked between
 * two batches; nothing is journalled and nothing changes.
 */
final class RejudgeDesk {
    private final WebPorts ports;
    private final Bodies bodies;
    private final Refusals refusals;

    RejudgeDesk(WebPorts ports, Bodies bodies, Refusals refusals) {
        this.ports = ports;
        this.bodies = bodies;
        this.refusals = refusals;
    }

    void ask(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isEmpty()) {
            return;
        }
        Fields fields = new Fields(body.get().json());
        Rejudgement.Question question = question(fields);
        if (!fields.wrong().isEmpty()) {
            refusals.refuse(request, WebRefusal.MALFORMED, fields.wrong());
            return;
        }
        Optional<Rejudgement> answer =
                Waiting.forAnswer(
                        ports.questions().ask(engine -> engine.rejudge(question)),
                        WebLimits.ANSWER_SECONDS);
        if (answer.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else if (answer.get().refusal() != null) {
            refusals.refuse(request, answer.get().refusal());
        } else {
            Replies.json(request, answer.get().found());
        }
    }

    private static Rejudgement.Question question(Fields fields) {
        return new Rejudgement.Question(
                fields.text("station", WebLimits.ID_CHARS),
                fields.text("point", WebLimits.ID_CHARS),
                new GuardTimes(
                        micros(fields, "lockoutMicros"),
                        micros(fields, "staysForMicros"),
                        micros(fields, "clearForMicros"),
                        micros(fields, "stoodForMicros"),
                        micros(fields, "minBlockMicros"),
                        micros(fields, "mergeGapMicros"),
                        micros(fields, "withinMicros"),
                        micros(fields, "spacingMicros")));
    }

    private static long micros(Fields fields, String field) {
        return fields.whole(field, 0, WebLimits.EXACT_MAX);
    }
}
