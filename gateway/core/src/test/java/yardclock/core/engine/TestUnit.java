package yardclock.core.engine;

import java.util.Arrays;
import java.util.List;

/**
 * One field unit of a test: its own counter at its own rate, its sequence numbers, and what it says
 * on the wire. Knows the true time only to stamp with its own.
 */
public final class TestUnit {
    private final String id;
    private String boot;
    private int boots;
    private long bootedMicros;
    private long ppm;
    private long seq;
    private int bufferFill;
    private final Integer[] states = new Integer[13];
    private String accessPoint = "";
    private int contract = 1;

    TestUnit(String id) {
        this.id = id;
        Arrays.fill(states, 0);
        reboot(-1_000_000_000L * id.charAt(1));
    }

    /** A new boot: a new counter and new numbers. */
    void reboot(long trueMicros) {
        boots++;
        boot = String.format("%s-boot-%d", id, boots);
        bootedMicros = trueMicros;
        seq = 0;
    }

    /** How many edges its health says it still holds. */
    void holds(int edges) {
        bufferFill = edges;
    }

    void runsFastBy(long partsPerMillion) {
        ppm = partsPerMillion;
    }

    /** The counter jumps and nobody is told. */
    void stepsBy(long micros) {
        bootedMicros -= micros;
    }

    void roamsTo(String newAccessPoint) {
        accessPoint = newAccessPoint;
    }

    void speaks(int newContract) {
        contract = newContract;
    }

    String boot() {
        return boot;
    }

    long tick(long trueMicros) {
        long elapsed = trueMicros - bootedMicros;
        return elapsed + elapsed * ppm / 1_000_000;
    }

    Input.Edge edge(int sensor, int state, long trueMicros) {
        states[sensor] = state;
        return new Input.Edge(id, boot, seq++, sensor, state, tick(trueMicros));
    }

    Input.Health health(long trueMicros) {
        return new Input.Health(
                id,
                boot,
                tick(trueMicros),
                seq,
                3_900,
                -60,
                bufferFill,
                100_000,
                "fw-1",
                contract,
                List.of(states).subList(1, 9),
                accessPoint);
    }

    /** An exchange of two messages, the given times under way. */
    Input.ExchangeAnswered exchange(long sentMicros, long downMicros, long upMicros) {
        long there = sentMicros + downMicros;
        long tick = tick(there);
        String name = "x" + sentMicros;
        return new Input.ExchangeAnswered(id, boot, name, sentMicros, tick, tick, there + upMicros);
    }
}
