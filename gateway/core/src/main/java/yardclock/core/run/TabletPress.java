package yardclock.core.run;

import yardclock.core.time.Stamp;
import yardclock.core.time.TimeLines;

/**
 * One press on a tablet: by the tablet's own clock, and in gateway time once that clock was
 * compared.
 *
 * <p>The same press stands wherever it counts (a tap, an end of a hold, a call) and is dated once,
 * by whoever keeps the tablets' clocks. Until then it is known to have happened, and to have
 * happened before it was received, but it has no time. Belongs to the state's thread.
 *
 * <p>Its stamp is the press's, not the act's: {@link HandMarks} adds what a hand adds.
 */
public final class TabletPress {
    private final String device;
    private final String boot;
    private final long tick;
    private final long receivedMicros;
    private final int receivedLine;
    private final TimeLines lines;
    private Stamp stamp;
    private int line;

    /**
     * @param boot which start of the tablet's clock the tick counts from; empty for no clock
     * @param tick microseconds since then
     * @param receivedMicros gateway time when the gateway had it, on the present time line
     */
    public TabletPress(
            String device, String boot, long tick, long receivedMicros, TimeLines lines) {
        this.device = device;
        this.boot = boot;
        this.tick = tick;
        this.receivedMicros = receivedMicros;
        this.receivedLine = lines.current();
        this.lines = lines;
    }

    /** An instant of the present time line that nobody pressed. */
    static TabletPress of(Stamp stamp, TimeLines lines) {
        return of(stamp, lines.current(), lines);
    }

    /** An instant that nobody pressed, such as the finish that ends a hold; as it reads now. */
    static TabletPress of(Stamp stamp, int line, TimeLines lines) {
        Stamp asRead = stamp.moved(-lines.carriedMicros(line));
        TabletPress press = new TabletPress("", "", 0, asRead.micros(), lines);
        press.date(line, asRead);
        return press;
    }

    public String device() {
        return device;
    }

    public String boot() {
        return boot;
    }

    public long tick() {
        return tick;
    }

    /** When it was received, as its own time line read; MAX when that line is over. */
    public long arrivedMicros() {
        return receivedLine == lines.current() ? receivedMicros : Long.MAX_VALUE;
    }

    public boolean isDated() {
        return stamp != null;
    }

    /** Where its time line is now. Null while the tablet's clock was not compared. */
    public Stamp stamp() {
        return stamp == null ? null : stamp.moved(lines.carriedMicros(line));
    }

    /** The time line its stamp is on. */
    int line() {
        return line;
    }

    /**
     * Called once.
     *
     * @param asRead as the time line read, before it was moved
     */
    public void date(int onLine, Stamp asRead) {
        if (stamp != null) {
            throw new IllegalStateException("dated already: " + this);
        }
        line = onLine;
        stamp = asRead;
    }

    /** For showing how long something lasts, and for waits; never for a measured time. */
    public long shownMicros() {
        return stamp == null ? receivedMicros() : stamp().micros();
    }

    /** Gateway time when the gateway had it, where its time line is now. */
    long receivedMicros() {
        return receivedMicros + lines.carriedMicros(receivedLine);
    }

    boolean isByHand() {
        return !device.isEmpty();
    }

    @Override
    public String toString() {
        String by = device + '/' + boot + '/' + tick + " by " + receivedLine + '/' + receivedMicros;
        return by + " at " + line + '/' + stamp;
    }
}
