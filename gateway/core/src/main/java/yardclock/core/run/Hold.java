package yardclock.core.run;

import yardclock.core.time.Shift;
import yardclock.core.time.TimeLines;

/**
 * A pause of one candidate that is credited. Both ends are presses as a rule; a run's own end ends
 * it too.
 *
 * @param out null while it lasts
 */
public record Hold(TabletPress in, TabletPress out, String reason) {
    public boolean isOpen() {
        return out == null;
    }

    public Hold ended(TabletPress at) {
        return new Hold(in, at, reason);
    }

    /** When it began, for showing how long it lasts. */
    public long shownSinceMicros() {
        return in.shownMicros();
    }

    boolean isDated() {
        return in.isDated() && !isOpen() && out.isDated();
    }

    boolean has(TabletPress press) {
        return in == press || out == press;
    }

    /** How long it was as pressed; −1 while one of its ends has no time. */
    long micros(TimeLines lines) {
        if (!isDated()) {
            return -1;
        }
        long apart = lines.apart(in.line(), out.line()).map(Shift::micros).orElse(0L);
        return Math.max(0, out.stamp().micros() - in.stamp().micros() - apart);
    }
}
