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
        Set<RouteRole> permits = request.routeRoles();
        String token = token(request);
        if (token.isEmpty()) {
            if (!isOpenWithoutToken(permits, request)) {
                refusals.refuse(request, withoutToken(permits));
            }
            return;
        }
        Optional<Answer<Optional<Holder>>> answer =
                Waiting.forAnswer(holders.apply(token), WebLimits.HOLDER_SECONDS);
        if (answer.isEmpty()) {
            refusals.refuse(request, WebRefusal.BUSY);
        } else if (answer.get().isRefused()) {
            refusals.refuse(request, answer.get());
        } else {
            admit(request, permits, answer.get().value());
        }
    }

    private void admit(Context request, Set<RouteRole> permits, Optional<Holder> found) {
        found.ifPresent(holder -> request.attribute(HOLDER, holder));
        if (isOpenWithoutToken(permits, request)) {
            return;
        }
        if (found.isEmpty()) {
            refusals.refuse(request, WebRefusal.UNKNOWN_TOKEN);
        } else if (!permits.contains(Permit.of(found.get().role()))) {
            refusals.refuse(request, WebRefusal.WRONG_ROLE);
        }
    }

    private boolean isOpenWithoutToken(Set<RouteRole> permits, Context request) {
        return permits.contains(Permit.PUBLIC)
                || permits.contains(Permit.LOOPBACK) && isLoopback(request)
                || permits.contains(Permit.PUBLIC_BY_PLAN) && leaderboardPublic.getAsBoolean();
    }

    private static WebRefusal withoutToken(Set<RouteRole> permits) {
        return permits.contains(Permit.PUBLIC_BY_PLAN)
                ? WebRefusal.NOT_PUBLIC
                : WebRefusal.UNKNOWN_TOKEN;
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
