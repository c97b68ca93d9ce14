package yardclock.app.broker;

import org.apache.activemq.artemis.api.core.SimpleString;
import org.apache.activemq.artemis.api.core.TransportConfiguration;
import org.apache.activemq.artemis.core.config.Configuration;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptorFactory;
import org.apache.activemq.artemis.core.server.JournalType;
import org.apache.activemq.artemis.core.server.embedded.EmbeddedActiveMQ;
import org.apache.activemq.artemis.core.settings.impl.AddressFullMessagePolicy;
import org.apache.activemq.artemis.core.settings.impl.AddressSettings;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.Map;

/**
 * The broker inside the gateway's process. Start it before the link and close it after; one thread
 * does both. What it stored is there again after a crash.
 */
public final class EmbeddedBroker implements AutoCloseable {
    /** Two threads of the network side serve a dozen units with ease. */
    private static final int NETWORK_THREADS = 2;

    private static final int POOL_THREADS = 8;
    private static final int TIMER_THREADS = 2;
    private static final int JOURNAL_FILE_BYTES = 4 << 20;

    /** What waits for an absent gateway is kept in memory up to here, then in page files. */
    private static final long MEMORY_BYTES = 16 << 20;

    private static final int PAGE_BYTES = 1 << 20;

    /** Below this much free disk the broker takes nothing more, so that the journal still can. */
    private static final long DISK_FREE_BYTES = 64 << 20;

    /** A question or a light that is older than this is of no use to a unit. */
    private static final long MOMENTARY_MILLIS = 2_000;

    /** A remembered login would skip the check that the client id is the user name. */
    private static final long NO_CACHE = 0;

    /** How long another gateway may take to let go of the folder, before starting is refused. */
    private static final long LOCK_MILLIS = 1_000;

    private static final int MOMENTARY_MESSAGES = 1_000;

    /** An address nobody reads: what expires is gone, as it should be. */
    private static final SimpleString NOWHERE = SimpleString.of("yardclock.nowhere");

    private final EmbeddedActiveMQ broker;
    private final String host;
    private final int port;

    /**
     * @param folder where its journal lives; made when missing
     * @param host the address to listen on: a loopback one unless units come over the network
     */
    public EmbeddedBroker(Path folder, String host, int port, UnitPasswords passwords) {
        broker =
                new EmbeddedActiveMQ()
                        .setConfiguration(configuration(folder, host, port))
                        .setSecurityManager(new UnitSecurity(passwords));
        this.host = host;
        this.port = port;
    }

    /** Where the gateway's own link finds it. */
    public String uri() {
        return "tcp://" + host + ":" + port;
    }

    /**
     * @throws IOException with a sentence for the operator, most often because the port is taken
     */
    public void start() throws IOException {
        probe();
        try {
            broker.start();
        } catch (Exception e) {
            throw new IOException("the embedded broker cannot start: " + e.getMessage(), e);
        }
        if (!broker.getActiveMQServer().isActive()) {
            close();
            throw new IOException("the embedded broker cannot start: its folder is in use");
        }
    }

    @Override
    public void close() {
        try {
            broker.stop();
        } catch (Exception e) {
            throw new IllegalStateException("the embedded broker cannot stop", e);
        }
    }

    /** Artemis only logs that an address is taken and goes on without it. */
    private void probe() throws IOException {
        try (ServerSocket socket = new ServerSocket()) {
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(host, port));
        } catch (IOException e) {
            throw new IOException(
                    "the broker cannot listen on " + uri() + ": " + e.getMessage(), e);
        }
    }

    private static Configuration configuration(Path folder, String host, int port) {
        Configuration configuration =
                new ConfigurationImpl()
                        .setName("yardclock")
                        .setPersistenceEnabled(true)
                        .setSecurityEnabled(true)
                        .setAuthenticationCacheSize(NO_CACHE)
                        .setJMXManagementEnabled(false)
                        .setMessageCounterEnabled(false)
                        .setThreadPoolMaxSize(POOL_THREADS)
                        .setScheduledThreadPoolMaxSize(TIMER_THREADS)
                        .setGlobalMaxSize(MEMORY_BYTES)
                        .setMaxDiskUsage(-1)
                        .setMinDiskFree(DISK_FREE_BYTES)
                        .addAcceptorConfiguration(acceptor(host, port))
                        .addAddressSetting("#", kept())
                        .addAddressSetting("yc.1.*.ask", momentary())
                        .addAddressSetting("yc.1.*.show", momentary());
        store(configuration, folder);
        return configuration;
    }

    /** The NIO journal syncs each batch to the disk before a client gets its acknowledgement. */
    private static void store(Configuration configuration, Path folder) {
        configuration
                .setJournalType(JournalType.NIO)
                .setJournalLockAcquisitionTimeout(LOCK_MILLIS)
                .setJournalDatasync(true)
                .setJournalSyncNonTransactional(true)
                .setJournalSyncTransactional(true)
                .setJournalFileSize(JOURNAL_FILE_BYTES)
                .setJournalMinFiles(2)
                .setJournalPoolFiles(4)
                .setJournalDirectory(folder.resolve("journal").toString())
                .setBindingsDirectory(folder.resolve("bindings").toString())
                .setPagingDirectory(folder.resolve("paging").toString())
                .setLargeMessagesDirectory(folder.resolve("large").toString());
    }

    private static TransportConfiguration acceptor(String host, int port) {
        Map<String, Object> where =
                Map.of(
                        "host",
                        host,
                        "port",
                        port,
                        "protocols",
                        "MQTT",
                        "useEpoll",
                        false,
                        "useKQueue",
                        false,
                        "remotingThreads",
                        NETWORK_THREADS);
        return new TransportConfiguration(NettyAcceptorFactory.class.getName(), where, "mqtt");
    }

    private static AddressSettings kept() {
        return new AddressSettings()
                .setAddressFullMessagePolicy(AddressFullMessagePolicy.PAGE)
                .setPageSizeBytes(PAGE_BYTES)
                .setMaxDeliveryAttempts(-1)
                .setRedeliveryDelay(0)
                .setDeadLetterAddress(NOWHERE)
                .setExpiryAddress(NOWHERE)
                .setAutoDeleteQueues(false)
                .setAutoDeleteAddresses(false);
    }

    private static AddressSettings momentary() {
        return new AddressSettings()
                .setAddressFullMessagePolicy(AddressFullMessagePolicy.DROP)
                .setMaxSizeMessages(MOMENTARY_MESSAGES)
                .setExpiryDelay(MOMENTARY_MILLIS);
    }
}
