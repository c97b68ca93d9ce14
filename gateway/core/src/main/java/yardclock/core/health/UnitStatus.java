package yardclock.core.health;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What is known of one field unit's well-being from its signs of life.
 *
 * <p>Silence is measured in real time: a link is as slow in a demonstration as in the yard.
 */
public final class UnitStatus {
    /** Three missed signs of life. */
    static final long SILENT_REAL_MICROS = 6_000_000;

    static final long OFF_LINE_REAL_MICROS = 15_000_000;
    private static final int SENSORS = 13;

    /** From never heard of to up and away again. */
    public enum Status {
        NEVER_SEEN("No sign of life yet today."),
        UP("Up."),
        SILENT("No sign of life for over 6 s. Look at its power and Wi-Fi."),
        OFF_LINE("Off line. Times at its station are taken by hand until it is back.");

        private final String words;
        private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

        Status(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public String word() {
            return word;
        }
    }

    private Status status = Status.NEVER_SEEN;
    private long sinceMicros;
    private long lastSeenMicros = -1;
    private String boot = "";
    private int batteryMillivolts;
    private int rssiDbm;
    private int bufferFill;
    private String firmware = "";
    private String accessPoint = "";
    private int contract;
    private final int[] sensorStates = new int[SENSORS];
    private final long[] stateTicks = new long[SENSORS];
    private final long[] lastEdgeMicros = new long[SENSORS];
    private String bootOfStates = "";

    public UnitStatus() {
        Arrays.fill(sensorStates, -1);
        Arrays.fill(stateTicks, -1);
        Arrays.fill(lastEdgeMicros, -1);
    }

    /** Returns whether the unit was not up before. */
    public boolean signOfLife(long nowMicros) {
        lastSeenMicros = nowMicros;
        return moveTo(Status.UP, nowMicros);
    }

    public void report(
            String boot, int batteryMillivolts, int rssiDbm, int bufferFill, String firmware) {
        this.boot = boot;
        this.batteryMillivolts = batteryMillivolts;
        this.rssiDbm = rssiDbm;
        this.bufferFill = bufferFill;
        this.firmware = firmware;
    }

    public void speaks(String accessPoint, int contract) {
        this.accessPoint = accessPoint;
        this.contract = contract;
    }

    /** What a comparison of its clock rests on. */
    public Circumstances circumstances() {
        return new Circumstances(boot, accessPoint, contract);
    }

    /** The states of sensors 1–8 at a tick of the boot that was reported last. */
    public void states(List<Integer> states, long tick) {
        takeBoot(boot);
        for (int i = 0; i < states.size() && i + 1 < SENSORS; i++) {
            setState(i + 1, states.get(i), tick);
        }
    }

    /**
     * A sensor changed. An edge that was sent again comes after newer ones, and is no news of the
     * present state; nor is one of a boot before the present.
     */
    public void edge(String edgeBoot, long tick, int sensor, int state, long atMicros) {
        lastEdgeMicros[sensor] = atMicros;
        if (boot.isEmpty() || edgeBoot.equals(boot)) {
            takeBoot(edgeBoot);
            setState(sensor, state, tick);
        }
    }

    private void takeBoot(String next) {
        if (!next.equals(bootOfStates)) {
            bootOfStates = next;
            Arrays.fill(stateTicks, -1);
        }
    }

    private void setState(int sensor, int state, long tick) {
        if (tick >= stateTicks[sensor]) {
            sensorStates[sensor] = state;
            stateTicks[sensor] = tick;
        }
    }

    /** The broker says its link is gone. */
    public boolean down(long nowMicros) {
        return moveTo(Status.OFF_LINE, nowMicros);
    }

    /** Moves on when too long nothing was heard; returns whether it did. */
    public boolean passTime(long nowMicros, int speed) {
        boolean isAwaited = status == Status.UP || status == Status.SILENT;
        if (isAwaited && nowMicros >= lastSeenMicros + OFF_LINE_REAL_MICROS * speed) {
            return moveTo(Status.OFF_LINE, nowMicros);
        }
        return status == Status.UP
                && nowMicros >= lastSeenMicros + SILENT_REAL_MICROS * speed
                && moveTo(Status.SILENT, nowMicros);
    }

    /** When silence becomes visible next; MAX for never. */
    public long nextDeadlineMicros(int speed) {
        return switch (status) {
            case UP -> lastSeenMicros + SILENT_REAL_MICROS * speed;
            case SILENT -> lastSeenMicros + OFF_LINE_REAL_MICROS * speed;
            case NEVER_SEEN, OFF_LINE -> Long.MAX_VALUE;
        };
    }

    private boolean moveTo(Status next, long nowMicros) {
        if (status == next) {
            return false;
        }
        status = next;
        sinceMicros = nowMicros;
        return true;
    }

    public Status status() {
        return status;
    }

    public long sinceMicros() {
        return sinceMicros;
    }

    public String boot() {
        return boot;
    }

    public int batteryMillivolts() {
        return batteryMillivolts;
    }

    public int rssiDbm() {
        return rssiDbm;
    }

    public int bufferFill() {
        return bufferFill;
    }

    public String firmware() {
        return firmware;
    }

    /** 1 closed, blocked or pressed; 0 open, clear or released; −1 unknown. */
    public int sensorState(int sensor) {
        return sensorStates[sensor];
    }

    public long lastEdgeMicros(int sensor) {
        return lastEdgeMicros[sensor];
    }

    @Override
    public String toString() {
        return status
                + " "
                + sinceMicros
                + " "
                + lastSeenMicros
                + " "
                + boot
                + " "
                + batteryMillivolts
                + " "
                + rssiDbm
                + " "
                + bufferFill
                + " "
                + firmware
                + " "
                + Arrays.toString(sensorStates)
                + " "
                + Arrays.toString(lastEdgeMicros)
                + " "
                + bootOfStates
                + " "
                + Arrays.toString(stateTicks)
                + " "
                + accessPoint
                + " "
                + contract;
    }
}
