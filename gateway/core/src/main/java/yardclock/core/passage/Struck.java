package yardclock.core.passage;

/** An edge that is in no passage, and the guard that struck it. */
public record Struck(TimedEdge edge, Guard guard) {}
