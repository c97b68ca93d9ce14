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
}
