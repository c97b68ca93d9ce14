package yardclock.app.web;

import io.javalin.http.Context;

/**
 * The headers that keep a browser from doing what our pages never do: run script that did not come
 * as a file of ours, show a page inside another site's, load anything from elsewhere.
 */
final class PageHeaders {
    private static final String POLICY = "Content-Security-Policy";

    private PageHeaders() {}

    static void set(Context answer) {
        answer.header(POLICY, policy(""))
                .header("X-Content-Type-Options", "nosniff")
                .header("X-Frame-Options", "DENY")
                .header("Referrer-Policy", "no-referrer")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
    }

    /** Also lets the one script of this hash run: a page's import map. */
    static void allowScript(Context answer, String hash) {
        answer.header(POLICY, policy(" " + hash));
    }

    /** Style may stand in a page, as on printed sheets; script may not. */
    private static String policy(String scriptHash) {
        return "default-src 'none'; script-src 'self'"
                + scriptHash
                + "; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'"
                + "; media-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'"
                + "; worker-src 'self'; frame-src 'self' blob:; base-uri 'none'"
                + "; form-action 'self'; frame-ancestors 'none'";
    }
}
