package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;

/**
 * A clock's phase at even steps, from exchanges that came at uneven times: of each step the
 * exchange that was least delayed. The overlapping Allan deviation of that phase tells the
 * network's noise, which falls with the span, from the crystal's wander, which does not.
 *
 * <p>A step without an exchange lies on the line between its neighbours; after a longer silence the
 * phase begins anew, because two ends of an outage say nothing of what lay between.
 */
final class EvenPhase {
    /** About six exchanges: of so many, a clean leg each way is likely even on busy Wi-Fi. */
    static final long STEP_MICROS = 30_000_000;

    /** Steps in a row that may be empty. */
    private static final int SILENT_STEPS_MAX = 3;

    private final List<Double> seconds = new ArrayList<>();
    private long step = Long.MIN_VALUE;
    private double closestDown;
    private double closestUp;

    /**
     * Takes the next exchange, in the order of its ticks.
     *
     * @param down how far above the line its downlink leg lies, microseconds: not far below is good
     * @param up how far above the line its uplink leg lies
     */
    void add(long tick, double down, double up) {
        long at = Math.floorDiv(tick, STEP_MICROS);
        if (at == step) {
            closestDown = Math.max(closestDown, down);
            closestUp = Math.min(closestUp, up);
            seconds.set(seconds.size() - 1, middleSeconds());
            return;
        }
        closestDown = down;
        closestUp = up;
        fill(at, middleSeconds());
        step = at;
    }

    private double middleSeconds() {
        return (closestDown + closestUp) / 2 * 1e-6;
    }

    private void fill(long at, double value) {
        long silent = seconds.isEmpty() ? 0 : at - step - 1;
        if (silent > SILENT_STEPS_MAX) {
            seconds.clear();
        } else if (silent > 0) {
            double last = seconds.get(seconds.size() - 1);
            for (long i = 1; i <= silent; i++) {
                seconds.add(last + (value - last) * i / (silent + 1));
            }
        }
        seconds.add(value);
    }

    /** Over one step, two, four and so on, as long as three such spans fit in. */
    List<ClockTrace.Steadiness> steadiness() {
        double[] phase = seconds.stream().mapToDouble(Double::doubleValue).toArray();
        List<ClockTrace.Steadiness> found = new ArrayList<>();
        for (int m = 1; 3 * m < phase.length; m *= 2) {
            double deviation = AllanDeviation.overlapping(phase, m, STEP_MICROS * 1e-6);
            found.add(new ClockTrace.Steadiness(m * STEP_MICROS, Math.round(deviation * 1e9)));
        }
        return found;
    }
}
