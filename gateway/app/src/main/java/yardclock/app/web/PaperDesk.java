package yardclock.app.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;

import io.javalin.http.Context;

import yardclock.app.lane.Answer;
import yardclock.core.course.ExamPlan;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Refusal;

import java.io.InputStream;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletionStage;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Hands out the day's documents, the plan, the gateway's state and its metrics. */
final class PaperDesk {
    private final WebPorts ports;
    private final Refusals refusals;

    PaperDesk(WebPorts ports, Refusals refusals) {
        this.ports = ports;
        this.refusals = refusals;
    }

    /** The plan as JSON with its hash beside its own fields. */
    private record PlanSheet(String sha256, @JsonUnwrapped ExamPlan plan) {}

    void plan(Context request) {
        Optional<Input.PlanFrozen> frozen = ports.documents().plan().get();
        if (frozen.isEmpty()) {
            refusals.refuse(request, Refusal.NO_PLAN);
        } else {
            Replies.json(request, new PlanSheet(frozen.get().sha256(), frozen.get().plan()));
        }
    }

    void resultsJson(Context request) {
        answer(
                request,
                ports.documents().resultsJson().get(),
                drawn -> Replies.bytes(request, "application/json", drawn.get()));
    }

    void resultsCsv(Context request) {
        answer(
                request,
                ports.documents().resultsCsv().get(),
                drawn -> {
                    request.header("Content-Disposition", "attachment; filename=\"results.csv\"");
                    Replies.bytes(request, "text/csv; charset=utf-8; header=present", drawn.get());
                });
    }

    void telling(Context request) {
        OptionalInt number = number(request);
        if (number.isEmpty()) {
            return;
        }
        answer(
                request,
                ports.documents().telling().apply(number.getAsInt(), Gate.theHolder(request)),
                drawn ->
                        request.header("Cache-Control", "no-store")
                                .contentType("text/html; charset=utf-8")
                                .result(drawn.get()));
    }

    void dossier(Context request) {
        OptionalInt number = number(request);
        if (number.isEmpty()) {
            return;
        }
        Optional<DossierForm> form = DossierForm.of(request.queryParam("as"));
        if (form.isEmpty()) {
            refusals.refuse(request, WebRefusal.MALFORMED, "as is json, en or es.");
            return;
        }
        answer(
                request,
                ports.documents().dossier().apply(number.getAsInt(), form.get()),
                made -> handOut(request, made.get(), form.get(), number.getAsInt()));
    }

    /** The web library copies it to the tablet as it is read, and closes it. */
    private void handOut(
            Context request, Optional<InputStream> made, DossierForm form, int number) {
        if (made.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
            return;
        }
        if (form == DossierForm.JSON) {
            String name = "attachment; filename=\"dossier-" + number + ".json\"";
            request.header("Content-Disposition", name);
        }
        request.header("Cache-Control", "no-store")
                .contentType(form.contentType())
                .result(made.get());
    }

    /** The number in the address, or empty when the request was refused already. */
    private OptionalInt number(Context request) {
        String number = request.pathParam("number");
        if (!number.matches("\\d{1,5}")) {
            refusals.refuse(request, WebRefusal.MALFORMED, "A number has one to five digits.");
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(number));
    }

    void state(Context request) {
        boolean known = Gate.holder(request).isPresent() || Gate.isLoopback(request);
        Optional<GatewayState> state =
                Waiting.forAnswer(ports.state().apply(known), WebLimits.ANSWER_SECONDS);
        if (state.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else {
            Replies.json(request, state.get());
        }
    }

    void metrics(Context request) {
        request.contentType("text/plain; version=0.0.4; charset=utf-8")
                .result(ports.scrape().get());
    }

    private <T> void answer(
            Context request,
            CompletionStage<Answer<Supplier<T>>> stage,
            Consumer<Supplier<T>> send) {
        Optional<Answer<Supplier<T>>> answer = Waiting.forAnswer(stage, WebLimits.ANSWER_SECONDS);
        if (answer.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else if (answer.get().isRefused()) {
            refusals.refuse(request, answer.get());
        } else {
            send.accept(answer.get().value());
        }
    }
}
