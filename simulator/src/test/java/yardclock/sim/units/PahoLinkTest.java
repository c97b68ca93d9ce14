package yardclock.sim.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.broker.EmbeddedBroker;
import yardclock.app.broker.UnitPasswords;
import yardclock.sim.stage.LiveStage;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/** A virtual unit on the gateway's own embedded broker; the test plays the gateway. */
class PahoLinkTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String UNIT = "fu-01";
    private static final List<Integer> REST = List.of(0, 0, 0, 0, 0, 0, 0, 0);

    @TempDir Path folder;

    private final LiveStage stage = new LiveStage(10);
    private final ConcurrentSkipListSet<Long> sequences = new ConcurrentSkipListSet<>();
    private final List<JsonNode> health = new CopyOnWriteArrayList<>();
    private UnitPasswords passwords;
    private int port;
    private EmbeddedBroker broker;
    private MqttClient gateway;
    private VirtualUnit unit;
    private PahoLink link;

    @BeforeEach
    void open() throws Exception {
        passwords = UnitPasswords.in(folder, List.of(UNIT));
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        startBroker();
        link = new PahoLink(stage, uri(), UNIT, passwords.of(UNIT));
        unit = new VirtualUnit(stage, new UnitSettings(UNIT, REST, 0, 1), link);
        stage.begin();
        stage.soon(unit::powerOn);
        await().until(() -> !health.isEmpty());
    }

    @AfterEach
    void close() throws Exception {
        unit.powerOff();
        stage.close();
        gateway.disconnectForcibly(0, 100);
        gateway.close(true);
        broker.close();
    }

    private String uri() {
        return "tcp://127.0.0.1:" + port;
    }

    private void startBroker() throws Exception {
        broker = new EmbeddedBroker(folder.resolve("broker"), "127.0.0.1", port, passwords);
        broker.start();
        MqttConnectOptions options = new MqttConnectOptions();
        options.setUserName(UnitPasswords.GATEWAY);
        options.setPassword(passwords.of(UnitPasswords.GATEWAY).toCharArray());
        gateway = new MqttClient(uri(), UnitPasswords.GATEWAY, new MemoryPersistence());
        gateway.connect(options);
        gateway.subscribe("yc/1/+/edges", 1, (topic, message) -> takeEdges(message.getPayload()));
        gateway.subscribe(
                "yc/1/+/health",
                1,
                (topic, message) -> health.add(JSON.readTree(message.getPayload())));
    }

    private void takeEdges(byte[] payload) throws IOException {
        JsonNode message = JSON.readTree(payload);
        if (message.isArray()) {
            message.forEach(edge -> sequences.add(edge.get("seq").asLong()));
        } else {
            sequences.add(message.get("seq").asLong());
        }
    }

    private void sense(int edges) {
        for (int i = 0; i < edges; i++) {
            stage.soon(() -> unit.sense(1, 1 - unit.state(1), stage.nowMicros()));
        }
    }

    private void awaitEdges(int count) {
        TreeSet<Long> all = new TreeSet<>(LongStream.range(0, count).boxed().toList());
        await().until(() -> sequences.equals(all));
    }

    @Test
    void edges_arrive_and_stay_in_the_buffer_until_they_are_kept() throws Exception {
        sense(20);
        awaitEdges(20);
        assertThat(unit.counts().open()).isEqualTo(20);
        String kept = "{\"v\":1,\"boot\":\"" + unit.counts().boot() + "\",\"upto\":19}";
        gateway.publish("yc/1/fu-01/kept", kept.getBytes(StandardCharsets.UTF_8), 1, true);
        await().until(() -> unit.counts().open() == 0);
    }

    @Test
    void a_unit_out_of_reach_leaves_its_will_and_brings_its_edges_when_it_is_back() {
        sense(5);
        awaitEdges(5);
        health.clear();
        stage.soon(unit::loseLink);
        sense(70);
        await().until(() -> health.stream().anyMatch(h -> h.path("up").asInt(1) == 0));
        awaitEdges(75);
        await().until(() -> health.get(health.size() - 1).path("nextSeq").asInt() == 75);
    }

    @Test
    void a_unit_finds_a_broker_that_was_away() throws Exception {
        sense(5);
        awaitEdges(5);
        gateway.disconnectForcibly(0, 100);
        gateway.close(true);
        broker.close();
        sense(40);
        startBroker();
        awaitEdges(45);
        assertThat(health.stream().map(h -> h.path("boot").asText("")).collect(Collectors.toSet()))
                .contains(unit.counts().boot());
    }
}
