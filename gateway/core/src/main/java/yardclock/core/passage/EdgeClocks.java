package yardclock.core.passage;

import yardclock.core.time.Stamp;

import java.util.Optional;

/** What the units' clocks say of an edge after the fact. Used on the state's own thread only. */
public interface EdgeClocks {
    /**
     * The final stamp, from exchanges on both sides of the edge; empty while more of them would
     * still change it, and for ever when the clock it was made by is gone.
     */
    Optional<Stamp> settled(TimedEdge edge);

    /**
     * The duration between two edges of one clock, as {@link Stamp} with limits: microseconds plus
     * the rate's uncertainty. Empty when they do not share a clock or its rate is not known.
     */
    Optional<Stamp> elapsed(TimedEdge start, TimedEdge finish);

    /**
     * Whether a unit has handed in everything it stamped between two instants of the present time
     * line, its clock's interval taken off. A unit of which no sign of life ever came has nothing
     * to hand in; one that is off line has not.
     */
    boolean isPast(String unit, long fromMicros, long toMicros);
}
