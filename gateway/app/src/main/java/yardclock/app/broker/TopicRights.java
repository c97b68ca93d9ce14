package yardclock.app.broker;

import java.util.Set;

/**
 * Who may write and read which address. Pure.
 *
 * <p>The broker's addresses are the topics with dots for slashes. The gateway may do everything
 * under the contract's root; a unit publishes what it has to say under its own id, and subscribes
 * to what is said to it there, each topic by its full name: no wildcard could name only its own.
 */
final class TopicRights {
    private static final String ROOT = "yc.1.";
    private static final Set<String> WRITTEN_BY_UNIT =
            Set.of("edges", "health", "climate", "answer", "applied");
    private static final Set<String> READ_BY_UNIT =
            Set.of("kept", "resend", "ask", "settings", "identify", "show");

    private TopicRights() {}

    static boolean mayWrite(String user, String address) {
        return user.equals(UnitPasswords.GATEWAY)
                ? address.startsWith(ROOT)
                : isOwn(user, address, WRITTEN_BY_UNIT);
    }

    static boolean mayRead(String user, String address) {
        return user.equals(UnitPasswords.GATEWAY)
                ? address.startsWith(ROOT)
                : isOwn(user, address, READ_BY_UNIT);
    }

    private static boolean isOwn(String unit, String address, Set<String> leaves) {
        String own = ROOT + unit + ".";
        return address.startsWith(own) && leaves.contains(address.substring(own.length()));
    }
}
