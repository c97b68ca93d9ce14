package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Feed;
import yardclock.core.engine.Engine.View;
import yardclock.core.ruling.Devices.Holder;

import java.util.Optional;

/** Opens live streams: frames for an audience, or the timing feed. */
final class LiveDesk {
    private final LiveStreams live;
    private final WebPorts ports;
    private final Refusals refusals;

    LiveDesk(LiveStreams live, WebPorts ports, Refusals refusals) {
        this.live = live;
        this.ports = ports;
        this.refusals = refusals;
    }

    void frames(Context request, Audience.Kind kind) {
        String device = kind == Audience.Kind.POST ? Gate.theHolder(request).device() : "";
        Audience audience = new Audience(kind, device);
        if (isPlace(request)) {
            live.openFrames(request, audience, clockOf(request, kind));
            askForFirst(audience);
        }
    }

    /** The public's screens press nothing. */
    private static String clockOf(Context request, Audience.Kind kind) {
        return kind == Audience.Kind.BOARD
                ? ""
                : Gate.holder(request).map(Holder::device).orElse("");
    }

    /** Without an answer the page still gets the lane's next frame, within a second. */
    private void askForFirst(Audience audience) {
        var unused =
                ports.questions()
                        .ask(
                                engine -> {
                                    live.drawNow(engine, view(), audience);
                                    return audience;
                                });
    }

    private View view() {
        return new View(ports.clock().now().micros(), ports.troubles().words());
    }

    void feed(Context request) {
        Optional<Long> after = after(request, ports.feed());
        if (after.isEmpty()) {
            refusals.refuse(
                    request,
                    WebRefusal.MALFORMED,
                    "“after” is a frame number of the feed, from 0.");
        } else if (isPlace(request)) {
            live.openFeed(request, ports.feed(), after.get());
        }
    }

    private boolean isPlace(Context request) {
        boolean place = live.takePlace();
        if (!place) {
            refusals.refuse(request, WebRefusal.TOO_MANY_STREAMS);
        }
        return place;
    }

    private static Optional<Long> after(Context request, Feed feed) {
        String resumed = request.header("Last-Event-ID");
        String asked = resumed == null ? request.queryParam("after") : resumed;
        if (asked == null) {
            return Optional.of(feed.newest());
        }
        return asked.matches("\\d{1,18}") ? Optional.of(Long.parseLong(asked)) : Optional.empty();
    }
}
