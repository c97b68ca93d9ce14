package yardclock.app.web;

import io.javalin.http.Context;

/** Writes answers that are not refusals. */
final class Replies {
    private Replies() {}

    static void json(Context request, Object body) {
        request.header("Cache-Control", "no-store")
                .contentType("application/json")
                .result(Refusals.json(body));
    }

    static void bytes(Context request, String contentType, byte[] body) {
        request.header("Cache-Control", "no-store").contentType(contentType).result(body);
    }
}
