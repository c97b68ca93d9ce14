package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.web.Dossiers.Form;
import yardclock.core.ruling.Refusal;

import java.util.Optional;
import java.util.concurrent.Semaphore;

/** Hands out dossiers, one at a time: each plays the whole day. */
final class DossierDesk {
    private final Dossiers dossiers;
    private final Refusals refusals;
    private final Semaphore one = new Semaphore(1);

    DossierDesk(Dossiers dossiers, Refusals refusals) {
        this.dossiers = dossiers;
        this.refusals = refusals;
    }

    void dossier(Context request) {
        String number = request.pathParam("number");
        Optional<Form> form = form(request);
        if (!number.matches("\\d{1,5}")) {
            refusals.refuse(request, WebRefusal.MALFORMED, "A number has one to five digits.");
        } else if (form.isEmpty()) {
            refusals.refuse(request, WebRefusal.MALFORMED, "as is json, en or es.");
        } else if (!one.tryAcquire()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else {
            try {
                make(request, Integer.parseInt(number), form.get());
            } finally {
                one.release();
            }
        }
    }

    private static Optional<Form> form(Context request) {
        String asked = request.queryParam("as");
        return switch (asked == null ? "json" : asked) {
            case "json" -> Optional.of(Form.JSON);
            case "en" -> Optional.of(Form.EN);
            case "es" -> Optional.of(Form.ES);
            default -> Optional.empty();
        };
    }

    private void make(Context request, int number, Form form) {
        Optional<byte[]> made = dossiers.make(number, form);
        if (made.isEmpty()) {
            refusals.refuse(request, Refusal.UNKNOWN_NUMBER);
        } else if (form == Form.JSON) {
            String name = "attachment; filename=\"dossier-" + number + ".json\"";
            request.header("Content-Disposition", name);
            Replies.bytes(request, "application/json", made.get());
        } else {
            Replies.bytes(request, "text/html; charset=utf-8", made.get());
        }
    }
}
