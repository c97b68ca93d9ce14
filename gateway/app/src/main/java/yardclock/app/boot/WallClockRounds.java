package yardclock.app.boot;

import yardclock.app.clock.WallWatch;
import yardclock.app.lane.Inbox;
import yardclock.core.engine.Input;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Looks at the wall clock each real second and hands in each step, one at a time. One thread of its
 * own; open the lane before and close it after.
 */
final class WallClockRounds implements AutoCloseable {
    private static final long EVERY_MILLIS = 1_000;

    private final WallWatch watch;
    private final Inbox inbox;
    private final AtomicBoolean underWay = new AtomicBoolean();
    private final ScheduledExecutorService rounds =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "wall-clock"));

    WallClockRounds(WallWatch watch, Inbox inbox) {
        this.watch = watch;
        this.inbox = inbox;
    }

    void start() {
        var unused =
                rounds.scheduleWithFixedDelay(
                        this::look, EVERY_MILLIS, EVERY_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void look() {
        if (underWay.compareAndSet(false, true) && watch.look().filter(this::handIn).isEmpty()) {
            underWay.set(false);
        }
    }

    /** Whether it is on its way. One that is lost is seen again the next second. */
    private boolean handIn(WallWatch.Step step) {
        Input input =
                new Input.WallStepped(step.gatewayMicros(), step.wallMicros(), step.stepMicros());
        return inbox.offer(
                input,
                receipt -> {
                    if (receipt.isKept()) {
                        watch.noted(step);
                    }
                    underWay.set(false);
                });
    }

    @Override
    public void close() throws InterruptedException {
        rounds.shutdown();
        rounds.awaitTermination(1, TimeUnit.SECONDS);
    }
}
