package yardclock.app.lane;

import yardclock.app.clock.GatewayClock;

/** What the lane works on: once it runs, journal and state belong to its thread. */
public record LaneParts(GatewayClock clock, Journal journal, LiveState state, Troubles troubles) {}
