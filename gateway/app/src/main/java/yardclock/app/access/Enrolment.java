package yardclock.app.access;

import yardclock.core.ruling.Role;

/** What a tablet gets for its code. The token is shown this once and kept nowhere else. */
public record Enrolment(String token, String device, Role role) {
    /** Without the token: it must not get into a log. */
    @Override
    public String toString() {
        return "Enrolment[" + device + ", " + role.word() + "]";
    }
}
