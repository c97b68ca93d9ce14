package yardclock.sim.yard;

/** How a station looks to somebody who stands there and looks. */
public enum Spot {
    READY,
    OCCUPIED,
    TO_BE_PUT_BACK
}
