package yardclock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;

import io.javalin.http.Context;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.json.Json;
import yardclock.app.lane.Answer;
import yardclock.core.course.Text;
import yardclock.core.ruling.Refusal;

import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Writes every refusal in the one form tablets understand, and counts it. Any thread. */
final class Refusals {
    private static final Logger LOG = LoggerFactory.getLogger(Refusals.class);

    private final Consumer<String> meter;

    Refusals(Consumer<String> meter) {
        this.meter = meter;
    }

    /** The body of each 4xx and 5xx. */
    record Body(String refused, String words) {}

    void refuse(Context request, WebRefusal refusal) {
        refuse(request, refusal, refusal.words());
    }

    void refuse(Context request, WebRefusal refusal, String words) {
        write(request, refusal.status(), new Body(refusal.reason(), words));
    }

    /** A refusal that another part gave. */
    void refuse(Context request, Answer<?> refused) {
        write(request, status(refused.refused()), new Body(refused.refused(), refused.words()));
    }

    void refuse(Context request, Refusal refusal) {
        write(request, status(refusal.code()), new Body(refusal.code(), refusal.words()));
    }

    /** The body of a refusal that met another ruling: both sides. */
    record Conflict(
            String refused, String words, RulingDesk.Mine mine, RulingDesk.Standing standing) {}

    void conflict(
            Context request, Refusal refusal, RulingDesk.Mine mine, RulingDesk.Standing standing) {
        String code = refusal.code();
        write(request, status(code), code, new Conflict(code, refusal.words(), mine, standing));
    }

    /**
     * The body of a refusal that is about things with names of their own.
     *
     * @param words with the names in them, for who reads no more than these
     */
    record Naming(String refused, String words, List<Text> named) {}

    void naming(Context request, Refusal refusal, List<Text> named) {
        String names = named.stream().map(Text::en).collect(Collectors.joining("; "));
        Naming body = new Naming(refusal.code(), refusal.words() + " Open: " + names + ".", named);
        write(request, status(body.refused()), body.refused(), body);
    }

    /** The rules' refusals are conflicts, but for those that are about who asks. */
    private static int status(String reason) {
        for (WebRefusal own : WebRefusal.values()) {
            if (own.reason().equals(reason)) {
                return own.status();
            }
        }
        return reason.equals(Refusal.NOT_YOUR_CANDIDATE.code()) ? 403 : 409;
    }

    private void write(Context request, int status, Body body) {
        write(request, status, body.refused(), body);
    }

    private void write(Context request, int status, String refused, Object body) {
        meter.accept(refused);
        if (status == 401) {
            request.header("WWW-Authenticate", "Bearer");
        }
        letFinish(request);
        request.status(status).contentType("application/json").result(json(body));
        request.skipRemainingHandlers();
    }

    /**
     * Takes in what the client still sends, as much as a body may have, and looks at none of it. A
     * server that answers a request it has not read must end the connection, and the client, still
     * sending, may lose the answer by that (RFC 9112, section 9.6). A body that never comes is
     * waited for as long as a connection may be idle. One that the client wants to be asked for is
     * not (RFC 9110, section 10.1.1).
     */
    private static void letFinish(Context request) {
        if (request.header("Expect") != null) {
            return;
        }
        try {
            // One more, so that the end of the longest body is seen too.
            var unused = request.req().getInputStream().readNBytes(WebLimits.BODY_BYTES + 1);
        } catch (IOException e) {
            LOG.debug("A request that is refused broke off", e);
        }
    }

    static String json(Object body) {
        try {
            return Json.mapper().writeValueAsString(body);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("records of words and numbers always become JSON", e);
        }
    }
}
