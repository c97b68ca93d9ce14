package yardclock.core.engine;

import yardclock.core.ruling.Act;

/**
 * One tablet of a test: its own counter at its own rate, new with each load of its page. Knows the
 * true time only to count with its own.
 */
public final class TestTablet {
    private final String device;
    private String boot;
    private int boots;
    private long loadedMicros;
    private long ppm;

    TestTablet(String device) {
        this.device = device;
        load(-3_000_000_000L - device.hashCode() % 1_000_000L);
    }

    /** The page is loaded anew: a new counter. */
    void load(long trueMicros) {
        boots++;
        boot = String.format("%s-page-%d", device, boots);
        loadedMicros = trueMicros;
    }

    void runsFastBy(long partsPerMillion) {
        ppm = partsPerMillion;
    }

    String boot() {
        return boot;
    }

    long tick(long trueMicros) {
        long elapsed = trueMicros - loadedMicros;
        return elapsed + elapsed * ppm / 1_000_000;
    }

    /** An exchange of two messages, the given times under way. */
    Input.TabletExchange exchange(long sentMicros, long downMicros, long upMicros) {
        long there = sentMicros + downMicros;
        String id = device + sentMicros;
        return new Input.TabletExchange(
                device, boot, id, sentMicros, tick(there), tick(there), there + upMicros);
    }

    /** A press at a true time, to be delivered later. */
    Press press(String key, Act act, long trueMicros) {
        return new Press(key, boot, tick(trueMicros), act);
    }

    /** What a tablet keeps of a press until the gateway has it. */
    record Press(String key, String boot, long tick, Act act) {
        Input.Ruling receivedAt(String device, long gatewayMicros) {
            return new Input.Ruling(key, device, boot, tick, gatewayMicros, -1, act);
        }
    }
}
