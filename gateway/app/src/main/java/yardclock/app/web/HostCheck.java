package yardclock.app.web;

import io.javalin.http.Context;

import java.net.URI;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Lets a request in only under a name the gateway really has, and only from its own pages.
 *
 * <p>A hostile page elsewhere can point a name of its own at the gateway's address and so have a
 * browser inside the yard talk to it. Such a request carries the hostile name as {@code Host}; an
 * address in digits, {@code localhost} or the machine's own name cannot be one. And a request that
 * a browser sends for another site's page carries that site as {@code Origin}.
 */
final class HostCheck {
    private static final Pattern DIGITS = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}");
    private static final Pattern BRACKETED = Pattern.compile("\\[[0-9a-f:.]+]");

    private final Set<String> names;

    HostCheck(Set<String> names) {
        this.names = Set.copyOf(names);
    }

    boolean isOurs(Context request) {
        String host = request.header("Host");
        return host != null && isOurName(withoutPort(host.toLowerCase(Locale.ROOT)));
    }

    boolean isFromOurPage(Context request) {
        String origin = request.header("Origin");
        if (origin == null) {
            return true;
        }
        try {
            return request.header("Host").equalsIgnoreCase(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private boolean isOurName(String name) {
        return DIGITS.matcher(name).matches()
                || BRACKETED.matcher(name).matches()
                || name.equals("localhost")
                || names.contains(name);
    }

    private static String withoutPort(String host) {
        int colon = host.lastIndexOf(':');
        boolean hasPort = colon >= 0 && host.indexOf(']', colon) < 0;
        return hasPort ? host.substring(0, colon) : host;
    }
}
