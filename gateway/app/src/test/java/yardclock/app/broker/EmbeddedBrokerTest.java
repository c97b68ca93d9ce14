package yardclock.app.broker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import yardclock.app.FreePort;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;

/** Who gets in, what each may say and hear, and what survives. */
class EmbeddedBrokerTest {
    private static final int REFUSED = 128;

    @TempDir static Path folder;

    private static UnitPasswords passwords;
    private static EmbeddedBroker broker;

    @BeforeAll
    static void open() throws IOException {
        passwords = UnitPasswords.in(folder, List.of("fu-01", "fu-02"));
        broker = started("broker");
    }

    @AfterAll
    static void close() {
        broker.close();
    }

    @Test
    void nobodyComesInWithoutAPasswordOrWithAWrongOne() {
        assertThatThrownBy(() -> new Client(broker.uri(), "x", null, null))
                .isInstanceOf(MqttException.class);
        assertThatThrownBy(() -> new Client(broker.uri(), "fu-01", "fu-01", "guessed"))
                .isInstanceOf(MqttException.class);
        assertThatThrownBy(() -> new Client(broker.uri(), "fu-09", "fu-09", passwords.of("fu-01")))
                .isInstanceOf(MqttException.class);
    }

    @Test
    void aUnitCannotTakeOverAnotherUnitsSession() throws MqttException {
        try (Client owner = client("fu-02")) {
            assertThatThrownBy(
                            () -> new Client(broker.uri(), "fu-02", "fu-01", passwords.of("fu-01")))
                    .isInstanceOf(MqttException.class);
            assertThat(owner.isConnected()).isTrue();
        }
    }

    @Test
    void aUnitWritesUnderItsOwnIdOnly() throws MqttException {
        try (Client gateway = client("gateway");
                Client unit = client("fu-01")) {
            gateway.subscribe("yc/1/+/edges");
            unit.publish("yc/1/fu-01/edges", "own", false);
            await().until(() -> gateway.heard().contains("yc/1/fu-01/edges own"));
            assertThatThrownBy(() -> unit.publish("yc/1/fu-02/edges", "foreign", false))
                    .isInstanceOf(MqttException.class);
            try (Client again = client("fu-01")) {
                again.publish("yc/1/fu-01/edges", "after", false);
            }
            await().until(() -> gateway.heard().contains("yc/1/fu-01/edges after"));
            assertThat(gateway.heard())
                    .containsExactly("yc/1/fu-01/edges own", "yc/1/fu-01/edges after");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yc/1/fu-01/kept",
                "yc/1/fu-01/settings",
                "yc/1/fu-02/kept",
                "other/topic",
                "$sys/mqtt/retain/yc/1/fu-01/kept"
            })
    void aUnitDoesNotSpeakForTheGateway(String topic) throws MqttException {
        try (Client unit = client("fu-01")) {
            assertThatThrownBy(() -> unit.publish(topic, "{}", true))
                    .isInstanceOf(MqttException.class);
        }
    }

    @Test
    void aUnitReadsWhatIsSaidToIt() throws MqttException {
        try (Client gateway = client("gateway");
                Client unit = client("fu-01")) {
            for (String leaf : List.of("kept", "resend", "ask", "settings", "identify", "show")) {
                assertThat(unit.subscribe("yc/1/fu-01/" + leaf)).as(leaf).isNotEqualTo(REFUSED);
                gateway.publish("yc/1/fu-01/" + leaf, "said", false);
                await(leaf).until(() -> unit.heard().contains("yc/1/fu-01/" + leaf + " said"));
            }
        }
    }

    @Test
    void aUnitReadsNothingElse() throws MqttException {
        List<String> filters =
                List.of(
                        "yc/1/fu-02/kept",
                        "yc/1/+/kept",
                        "yc/1/fu-01/#",
                        "yc/1/fu-01/+",
                        "#",
                        "yc/1/fu-01/edges",
                        "$share/g/yc/1/fu-02/kept",
                        "$sys/mqtt/#");
        try (Client unit = client("fu-01")) {
            for (String filter : filters) {
                assertThat(unit.subscribe(filter)).as(filter).isEqualTo(REFUSED);
            }
        }
    }

    @Test
    void whatWaitsForAnAbsentClientSurvivesARestart() throws Exception {
        EmbeddedBroker first = started("restarted");
        try (Client gateway = client(first, "gateway")) {
            gateway.subscribe("yc/1/+/edges");
        }
        try (Client unit = client(first, "fu-01")) {
            unit.publish("yc/1/fu-01/edges", "one", false);
            unit.publish("yc/1/fu-01/health", "up", true);
        }
        first.close();
        EmbeddedBroker second = started("restarted");
        try (Client gateway = client(second, "gateway")) {
            gateway.subscribe("yc/1/+/health");
            await().until(
                            () ->
                                    gateway.heard().contains("yc/1/fu-01/edges one")
                                            && gateway.heard().contains("yc/1/fu-01/health up"));
        } finally {
            second.close();
        }
    }

    @Test
    void aPortInUseIsARefusalInWords() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            EmbeddedBroker second =
                    new EmbeddedBroker(
                            folder.resolve("second"), "127.0.0.1", taken.getLocalPort(), passwords);
            assertThatThrownBy(second::start)
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("cannot listen on " + second.uri());
        }
    }

    @Test
    void aFolderInUseIsARefusalInWords() {
        assertThatThrownBy(() -> started("broker"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("its folder is in use");
    }

    private static Client client(String name) throws MqttException {
        return client(broker, name);
    }

    private static Client client(EmbeddedBroker at, String name) throws MqttException {
        return new Client(at.uri(), name, name, passwords.of(name));
    }

    private static EmbeddedBroker started(String name) throws IOException {
        EmbeddedBroker made =
                new EmbeddedBroker(folder.resolve(name), "127.0.0.1", FreePort.find(), passwords);
        made.start();
        return made;
    }
}
