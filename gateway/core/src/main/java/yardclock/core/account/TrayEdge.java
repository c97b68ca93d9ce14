package yardclock.core.account;

import yardclock.core.passage.TimedEdge;

/** A passage that is nobody's: the edge that would stamp it, and where. */
public record TrayEdge(String station, TimedEdge edge, Cause cause) {}
