package yardclock.app.web;

import io.javalin.http.Context;
import io.javalin.security.RouteRole;

import yardclock.app.lane.Answer;
import yardclock.core.ruling.Devices.Holder;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletionStage;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Opens a route to those who have one of its permits, and to nobody else. Any thread.
 *
 * <p>Holders are looked up once for a request and then stay with it.
 */
final class Gate {
    private static final String HOLDER = "yardclock.holder";
    private static final String BEARER = "Bearer ";

    private final Function<String, CompletionStage<Answer<Optional<Holder>>>> holders;
    private final BooleanSupplier leaderboardPublic;
    private final Refusals refusals;

    Gate(
            Function<String, CompletionStage<Answer<Optional<Holder>>>> holders,
            BooleanSupplier leaderboardPublic,
            Refusals refusals) {
        this.holders = holders;
        this.leaderboardPublic = leaderboardPublic;
        this.refusals = refusals;
    }

    /** Who asks, when it is someone enrolled. */
    static Optional<Holder> holder(Context request) {
        return Optional.ofNullable(request.attribute(HOLDER));
    }

    /** Who asks, on a route that only roles open. */
    static Holder theHolder(Context request) {
        return holder(request).orElseThrow(() -> new IllegalStateException(request.path()));
    }

    void check(Context request) {
        boolean open = isOpenWithoutToken(request);
        String token = token(request);
        if (token.isEmpty()) {
            if (!open) {
                refusals.refuse(request, withoutToken(request.routeRoles()));
            }
            return;
        }
        Optional<Answer<Optional<Holder>>> answer =
                Waiting.forAnswer(holders.apply(token), WebLimits.HOLDER_SECONDS);
        answer.filter(found -> !found.isRefused())
                .flatMap(Answer::value)
                .ifPresent(holder -> request.attribute(HOLDER, holder));
        if (!open) {
            admit(request, answer);
        }
    }

    private void admit(Context request, Optional<Answer<Optional<Holder>>> answer) {
        if (answer.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else if (answer.get().isRefused()) {
            refusals.refuse(request, answer.get());
        } else if (answer.get().value().isEmpty()) {
            refusals.refuse(request, WebRefusal.UNKNOWN_DEVICE);
        } else if (!request.routeRoles().contains(Permit.of(theHolder(request).role()))) {
            refusals.refuse(request, WebRefusal.NOT_YOUR_ROLE);
        }
    }

    private boolean isOpenWithoutToken(Context request) {
        Set<RouteRole> permits = request.routeRoles();
        return permits.contains(Permit.PUBLIC)
                || permits.contains(Permit.LOOPBACK) && isLoopback(request)
                || permits.contains(Permit.PUBLIC_BY_PLAN) && leaderboardPublic.getAsBoolean();
    }

    private static WebRefusal withoutToken(Set<RouteRole> permits) {
        return permits.contains(Permit.PUBLIC_BY_PLAN)
                ? WebRefusal.NOT_PUBLIC
                : WebRefusal.UNKNOWN_DEVICE;
    }

    private static String token(Context request) {
        String header = request.header("Authorization");
        return header != null && header.startsWith(BEARER)
                ? header.substring(BEARER.length()).strip()
                : "";
    }

    /** From this machine itself, and not through a forwarder that runs on it. */
    static boolean isLoopback(Context request) {
        try {
            return request.header("X-Forwarded-For") == null
                    && request.header("Forwarded") == null
                    && InetAddress.getByName(request.req().getRemoteAddr()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
