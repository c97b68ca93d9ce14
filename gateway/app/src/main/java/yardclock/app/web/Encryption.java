package yardclock.app.web;

import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * Makes the one connector that speaks TLS. Which versions and ciphers are good enough is left to
 * the JDK and the server library, which are kept up to date; nothing older than TLS 1.2.
 */
final class Encryption {
    private Encryption() {}

    static Connector connector(Server server, HttpConfiguration http, WebAddress at) {
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStore(at.certificate().store());
        tls.setKeyStorePassword(at.certificate().password());
        tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        HttpConfiguration secure = new HttpConfiguration(http);
        // Which names are ours is HostCheck's business; an address in digits has no such name.
        secure.addCustomizer(new SecureRequestCustomizer(false));
        String next = "http/1.1";
        ServerConnector connector =
                new ServerConnector(
                        server,
                        new SslConnectionFactory(tls, next),
                        new HttpConnectionFactory(secure));
        connector.setHost(at.host());
        connector.setPort(at.port());
        return connector;
    }
}
