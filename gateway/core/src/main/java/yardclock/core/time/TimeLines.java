package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The gateway's time lines of a day, one after the other, and how far each is ahead of the others.
 *
 * <p>A line begins with the day, and anew when the gateway starts on another boot of a machine, or
 * on another machine. Nothing the gateway has can tell how its new line lies to the old one; field
 * units and tablets that ran on can. Each ties the two: its counter's last exchange on the old line
 * and its first on the new one, and between them the ticks it counted. What all ties allow together
 * is the {@link Shift}; without one, no time can be told across the lines.
 *
 * <p><b>Carrying.</b> Instants of old lines are moved onto the present one once a tie is known, so
 * that they can be compared, ordered and shown beside new ones. {@link #carry} says by how much, in
 * whole microseconds and the same for a whole line: durations within a line do not change. What the
 * move leaves open is {@link #apart}.
 *
 * <p>Lines are numbered from 0. Owned by one thread.
 */
public final class TimeLines {
    private final LineTies ties = new LineTies();
    private final List<Long> carriedMicros = new ArrayList<>(List.of(0L));

    public int current() {
        return carriedMicros.size() - 1;
    }

    /** Another line begins; nothing ties it yet. */
    public void begin() {
        carriedMicros.add(0L);
        ties.forgetBefore(Math.max(0, current() + 1 - LineTies.LINES_KEPT));
    }

    /**
     * Takes what a counter that ran on says of the line it was last compared on and the present
     * one. Said again with more exchanges, it takes the place of what the same source said before.
     */
    public void tie(String source, int from, ClockEnd before, ClockEnd after) {
        LineTies.shift(before, after).ifPresent(s -> ties.put(source, from, current(), s));
    }

    /** A source that tied the present line can't stand by it any more. */
    public void untie(String source) {
        ties.remove(source, current());
    }

    /** How far a later line is ahead of an earlier one, both as they were read. */
    public Optional<Shift> shift(int from, int to) {
        return ties.between(from, to);
    }

    /** Whether counters that ran on contradict each other about the present line. */
    public boolean isContradicted() {
        for (int line = 0; line < current(); line++) {
            if (ties.isContradicted(line, current())) {
                return true;
            }
        }
        return false;
    }

    /** How many counters tie the present line to an earlier one directly. */
    public int sources() {
        int sources = 0;
        for (int line = 0; line < current(); line++) {
            sources += ties.sources(line, current());
        }
        return sources;
    }

    /** Whether any earlier line is tied to the present one. */
    public boolean isTied() {
        for (int line = 0; line < current(); line++) {
            if (shift(line, current()).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /**
     * By how much the instants of each earlier line must be moved now to be read on the present
     * one: those that were never moved, and those that a better tie shows to be off. Whoever asks
     * must move them all.
     */
    public Carry carry() {
        SortedMap<Integer, Long> moves = new TreeMap<>();
        for (int line = 0; line < current(); line++) {
            long carried = carriedMicros.get(line);
            Optional<Shift> shift = shift(line, current()).filter(s -> !s.admits(carried));
            if (shift.isPresent()) {
                moves.put(line, shift.get().micros() - carried);
                carriedMicros.set(line, shift.get().micros());
            }
        }
        return new Carry(moves);
    }

    /** How far the instants of a line have been moved so far. */
    public long carriedMicros(int line) {
        return carriedMicros.get(line);
    }

    /**
     * What must be taken from the difference of two instants, as carried, for the time between
     * them: nothing within a line, the rest of the shift across lines, empty where none is known.
     */
    public Optional<Shift> apart(int from, int to) {
        return shift(from, to).map(s -> apart(from, to, s));
    }

    /** The same by a shift that was known at an earlier time, such as when a person ruled. */
    public Shift apart(int from, int to, Shift shift) {
        return shift.less(carriedMicros.get(from) - carriedMicros.get(to));
    }

    @Override
    public String toString() {
        return carriedMicros + " " + ties;
    }
}
