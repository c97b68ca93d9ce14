package yardclock.app.pins;

import com.pi4j.io.gpio.digital.DigitalOutput;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Troubles;
import yardclock.app.pins.SignalPattern.Sound;
import yardclock.core.board.Head;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Stack light, horn and dead-man on the board's lines.
 *
 * <p>The lane shows the state with every picture it draws, at least once a second; a thread of its
 * own switches lines by the newest of these looks. Looks are what the pulse is made of: a lane that
 * hangs, has died, can keep nothing or whose rules have failed gives none that lets it rise, and so
 * does a thread here that hangs. Without looks for {@link #STALE_NANOS} every line loses its power,
 * as it does when this is closed.
 */
public final class Outputs implements AutoCloseable {
    /** The source of the trouble that is raised while the outputs can't be driven. */
    public static final String TROUBLE = "outputs";

    /** Two looks of an idle lane and a little: later than that, nobody knows what is so. */
    static final long STALE_NANOS = TimeUnit.MILLISECONDS.toNanos(2_500);

    private static final Logger LOG = LoggerFactory.getLogger(Outputs.class);
    private static final long STEP_MILLIS = 20;

    private final OutputMap map;
    private final GatewayClock clock;
    private final Troubles troubles;
    private final Map<OutputJob, DigitalOutput> lines = new EnumMap<>(OutputJob.class);
    private final BlockingQueue<Look> looks = new ArrayBlockingQueue<>(1);
    private final CountDownLatch closing = new CountDownLatch(1);
    private final Thread thread = new Thread(this::run, "outputs");
    private final Pulse pulse = new Pulse();
    private boolean isFailing;
    private Look newest;
    private YardSignal before;
    private long newestNanos;
    private Sound sound = Sound.NONE;

    /** What the lane saw, and whether a stop that came now would be kept and carried out. */
    private record Look(YardSignal signal, boolean takesStops) {}

    public Outputs(OutputMap map, GatewayClock clock, Troubles troubles) {
        this.map = map;
        this.clock = clock;
        this.troubles = troubles;
        thread.setDaemon(true);
    }

    /** Opens the lines; where that fails, says so and goes on without them. */
    public void start(BoardPins board) {
        try {
            Pins pins = board.open();
            map.lineOfJob().forEach((job, line) -> lines.put(job, pins.openOutput(line, job)));
            thread.start();
        } catch (RuntimeException | LinkageError e) {
            complain("can't be used; everything else runs on: ", e);
        }
    }

    private void complain(String what, Throwable e) {
        String words = "The outputs of this board, lamps and horn, " + what + e.getMessage();
        if (troubles.of(TROUBLE).equals("ok")) {
            LOG.warn("{}", words, e);
        }
        troubles.raise(TROUBLE, words);
    }

    /**
     * Shows the state as it is now. Called by the lane's thread only, and never waits.
     *
     * @param takesStops whether a stop that came now would be kept and carried out
     */
    public void look(Head head, boolean takesStops) {
        looks.clear();
        var unused = looks.offer(new Look(YardSignal.of(head), takesStops));
    }

    private void run() {
        try {
            while (closing.getCount() > 0) {
                Look look = looks.poll(STEP_MILLIS, TimeUnit.MILLISECONDS);
                step(look, clock.realNanos());
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        } finally {
            switchTo(Set.of(), false);
        }
    }

    /** Says what has come in, if anything, and switches what is due. */
    private void step(Look look, long nowNanos) {
        if (look != null) {
            sound = SignalPattern.next(sound, before, look.signal(), nowNanos);
            before = look.signal();
            newest = look;
            newestNanos = nowNanos;
        }
        boolean isAlive =
                newest != null && newest.takesStops() && nowNanos - newestNanos < STALE_NANOS;
        boolean mayRun = isAlive && !newest.signal().isStopped();
        Set<OutputJob> on =
                isAlive
                        ? SignalPattern.energised(newest.signal(), sound, nowNanos)
                        : Set.<OutputJob>of();
        switchTo(on, pulse.at(look != null, mayRun, nowNanos));
    }

    private void switchTo(Set<OutputJob> on, boolean isPulseHigh) {
        try {
            lines.forEach(
                    (job, line) -> {
                        boolean isOn = job == OutputJob.PULSE ? isPulseHigh : on.contains(job);
                        if (line.isHigh() != isOn) {
                            line.setState(isOn);
                        }
                    });
            if (isFailing) {
                isFailing = false;
                troubles.clear(TROUBLE);
            }
        } catch (RuntimeException e) {
            // The dead-man goes by the pulse and not by what was meant.
            isFailing = true;
            complain("can't be switched: ", e);
        }
    }

    /** Takes the power from every line; close the lane after, so that nobody is left guessing. */
    @Override
    public void close() {
        closing.countDown();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(5));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
