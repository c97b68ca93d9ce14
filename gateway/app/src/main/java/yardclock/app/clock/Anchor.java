package yardclock.app.clock;

/**
 * Where gateway time and the machine's clocks were tied together, at one instant read on all three.
 *
 * @param machineBoot the boot the monotonic reading belongs to
 * @param continuous whether gateway time went on unbroken from the anchor before
 */
public record Anchor(
        String machineBoot,
        long gatewayMicros,
        long monotonicMicros,
        long wallMicros,
        int speed,
        boolean continuous) {

    /** The first anchor of a new journal: gateway time begins at 0. */
    public static Anchor first(Machine machine, int speed) {
        return now(machine, 0, speed, false);
    }

    /**
     * The anchor of a start that goes on from an earlier one, at the same speed.
     *
     * @param lastGatewayMicros the newest gateway time in the journal; the new anchor is not
     *     earlier
     */
    public static Anchor after(Anchor earlier, long lastGatewayMicros, Machine machine) {
        long elapsed = machine.monotonicMicros() - earlier.monotonicMicros;
        long unbroken = earlier.gatewayMicros + elapsed * earlier.speed;
        boolean sameBoot = earlier.machineBoot.equals(machine.boot());
        if (sameBoot && elapsed >= 0 && unbroken >= lastGatewayMicros) {
            return new Anchor(
                    machine.boot(),
                    unbroken,
                    earlier.monotonicMicros + elapsed,
                    machine.wallMicros(),
                    earlier.speed,
                    true);
        }
        return now(machine, broken(earlier, lastGatewayMicros, machine), earlier.speed, false);
    }

    // Another boot: here only the wall clock can say how long the machine was away, and someone may
    // have set it meanwhile. So this is a guess for people to read and for a first order. The
    // engine, which learns from field units how far the lines are apart, measures nothing by it.
    // Not before the last entry: by that the engine tells which instants are from before.
    private static long broken(Anchor earlier, long lastGatewayMicros, Machine machine) {
        long wallAtLast =
                earlier.wallMicros + (lastGatewayMicros - earlier.gatewayMicros) / earlier.speed;
        long away = Math.max(0, machine.wallMicros() - wallAtLast);
        return lastGatewayMicros + away * earlier.speed;
    }

    private static Anchor now(Machine machine, long gatewayMicros, int speed, boolean continuous) {
        return new Anchor(
                machine.boot(),
                gatewayMicros,
                machine.monotonicMicros(),
                machine.wallMicros(),
                speed,
                continuous);
    }
}
