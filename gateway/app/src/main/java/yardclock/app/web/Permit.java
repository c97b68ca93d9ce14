package yardclock.app.web;

import io.javalin.security.RouteRole;

import yardclock.core.ruling.Role;

import java.util.Objects;

/** What opens a route: being anyone, being on this machine, or holding a role. */
enum Permit implements RouteRole {
    /** Anyone, without a token. */
    PUBLIC(null),
    /** A request from this machine itself, without a token. */
    LOOPBACK(null),
    /** Anyone, when the plan makes the leaderboard public. */
    PUBLIC_BY_PLAN(null),
    COORDINATOR(Role.COORDINATOR),
    TECHNICIAN(Role.TECHNICIAN),
    PROCTOR(Role.PROCTOR),
    CREW(Role.CREW),
    SAFETY(Role.SAFETY);

    private final Role role;

    Permit(Role role) {
        this.role = role;
    }

    static Permit of(Role role) {
        Objects.requireNonNull(role);
        for (Permit permit : values()) {
            if (permit.role == role) {
                return permit;
            }
        }
        throw new IllegalStateException("no permit for the role " + role);
    }
}
