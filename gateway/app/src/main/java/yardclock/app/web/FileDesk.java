package yardclock.app.web;

import io.javalin.http.Context;

import java.util.Optional;

/** Sends pages and their files, and asks browsers to check each time whether theirs is current. */
final class FileDesk {
    private final WebFiles files;
    private final Refusals refusals;

    FileDesk(WebFiles files, Refusals refusals) {
        this.files = files;
        this.refusals = refusals;
    }

    /** A page, at its own short address. */
    void page(Context request) {
        send(request, files.own("index.html"), "no-cache");
    }

    void postWorker(Context request) {
        send(request, files.postWorker(), "no-cache");
    }

    void own(Context request) {
        send(request, files.own(request.pathParam("path")), "no-cache");
    }

    /** A library's address has its version in it, so its content never changes. */
    void library(Context request) {
        send(
                request,
                files.library(request.pathParam("path")),
                "public, max-age=31536000, immutable");
    }

    void description(Context request) {
        send(request, files.description(), "no-cache");
    }

    private void send(Context request, Optional<WebFile> found, String caching) {
        if (found.isEmpty()) {
            refusals.refuse(request, WebRefusal.NOT_FOUND);
            return;
        }
        WebFile file = found.get();
        request.header("ETag", file.etag()).header("Cache-Control", caching);
        if (!file.scriptHash().isEmpty()) {
            PageHeaders.allowScript(request, file.scriptHash());
        }
        if (file.etag().equals(request.header("If-None-Match"))) {
            request.status(304);
        } else {
            request.contentType(file.contentType()).result(file.bytes());
        }
    }
}
