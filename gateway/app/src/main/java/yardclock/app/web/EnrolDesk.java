package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Answer;
import yardclock.core.ruling.Role;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionStage;

/** Takes one-time codes for tokens, and makes codes for the coordinator. */
final class EnrolDesk {
    /** A code with the spaces and hyphens people add. */
    private static final int CODE_CHARS = 32;

    private static final int PERSON_CHARS = 200;
    private static final List<String> ROLES = Arrays.stream(Role.values()).map(Role::word).toList();

    private final Doors doors;
    private final Bodies bodies;
    private final Refusals refusals;

    EnrolDesk(Doors doors, Bodies bodies, Refusals refusals) {
        this.doors = doors;
        this.bodies = bodies;
        this.refusals = refusals;
    }

    void enrol(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isEmpty()) {
            return;
        }
        Fields fields = new Fields(body.get().json());
        String code = fields.text("code", CODE_CHARS);
        String person = fields.text("person", PERSON_CHARS);
        if (isWell(request, fields)) {
            reply(request, doors.enrol().apply(code, person));
        }
    }

    void makeCode(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isEmpty()) {
            return;
        }
        Fields fields = new Fields(body.get().json());
        String role = fields.word("role", ROLES);
        if (isWell(request, fields)) {
            String issuer = Gate.theHolder(request).device();
            Role wanted = Role.values()[ROLES.indexOf(role)];
            reply(request, doors.issue().apply(wanted, issuer));
        }
    }

    private boolean isWell(Context request, Fields fields) {
        if (fields.wrong().isEmpty()) {
            return true;
        }
        refusals.refuse(request, WebRefusal.MALFORMED, fields.wrong());
        return false;
    }

    private void reply(Context request, CompletionStage<? extends Answer<?>> stage) {
        Optional<? extends Answer<?>> answer = Waiting.forAnswer(stage, WebLimits.ANSWER_SECONDS);
        if (answer.isEmpty()) {
            refusals.refuse(request, WebRefusal.NO_ANSWER);
        } else if (answer.get().isRefused()) {
            refusals.refuse(request, answer.get());
        } else {
            Replies.json(request, answer.get().value());
        }
    }
}
