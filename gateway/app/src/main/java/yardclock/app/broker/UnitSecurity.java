package yardclock.app.broker;

import org.apache.activemq.artemis.api.core.SimpleString;
import org.apache.activemq.artemis.core.security.CheckType;
import org.apache.activemq.artemis.core.security.Role;
import org.apache.activemq.artemis.spi.core.protocol.RemotingConnection;
import org.apache.activemq.artemis.spi.core.security.ActiveMQSecurityManager5;
import org.apache.activemq.artemis.spi.core.security.jaas.UserPrincipal;
import org.apache.activemq.artemis.utils.CompositeAddress;

import java.util.Set;

import javax.security.auth.Subject;

/**
 * Artemis asks here whether someone may connect, publish or subscribe. Stateless; any thread.
 *
 * <p>The client id must be the user name: otherwise a unit could take over another unit's session
 * with its own password. Roles are not used, since the right follows from the user and the address.
 */
final class UnitSecurity implements ActiveMQSecurityManager5 {
    private final UnitPasswords passwords;

    UnitSecurity(UnitPasswords passwords) {
        this.passwords = passwords;
    }

    @Override
    public Subject authenticate(
            String user, String password, RemotingConnection connection, String domain) {
        if (!passwords.matches(user, password)
                || connection == null
                || !user.equals(connection.getClientID())) {
            return null;
        }
        Subject subject = new Subject();
        subject.getPrincipals().add(new UserPrincipal(user));
        subject.setReadOnly();
        return subject;
    }

    @Override
    public boolean authorize(Subject subject, Set<Role> roles, CheckType type, String address) {
        if (subject == null) {
            return false;
        }
        String user = nameOf(subject);
        String topic = CompositeAddress.extractAddressName(SimpleString.of(address)).toString();
        if (type == CheckType.SEND) {
            return TopicRights.mayWrite(user, topic);
        }
        if (type == CheckType.CREATE_ADDRESS) {
            return TopicRights.mayWrite(user, topic) || TopicRights.mayRead(user, topic);
        }
        boolean subscribes =
                type == CheckType.CONSUME
                        || type == CheckType.CREATE_DURABLE_QUEUE
                        || type == CheckType.CREATE_NON_DURABLE_QUEUE
                        || type == CheckType.DELETE_DURABLE_QUEUE
                        || type == CheckType.DELETE_NON_DURABLE_QUEUE;
        return subscribes && TopicRights.mayRead(user, topic);
    }

    /** Artemis asks this of a refused login too, where there is no subject. */
    @Override
    public String getUserFromSubject(Subject subject) {
        return subject == null ? null : nameOf(subject);
    }

    private static String nameOf(Subject subject) {
        return subject.getPrincipals(UserPrincipal.class).iterator().next().getName();
    }

    @Override
    public boolean validateUser(String user, String password) {
        return false;
    }

    @Override
    public boolean validateUserAndRole(
            String user, String password, Set<Role> roles, CheckType type) {
        return false;
    }
}
