package yardclock.app.web;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * One line of the table: a method and a path, what opens it, and what answers.
 *
 * <p>A line without a permit cannot be written: the constructor refuses it, and the gateway does
 * not start.
 */
record Route(HandlerType method, String path, Set<Permit> permits, Handler handler) {
    Route {
        if (permits.isEmpty()) {
            throw new IllegalArgumentException(method.name() + " " + path + " has no permit");
        }
        permits = Collections.unmodifiableSet(EnumSet.copyOf(permits));
    }
}
