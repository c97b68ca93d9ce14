package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

/** Told of everything that happens at the sensors, whether they see it or not. On the stage. */
@FunctionalInterface
public interface Diary {
    void happened(Happening happening);

    /**
     * One change a body made.
     *
     * @param who a candidate's number, or a stray's own
     */
    record Happening(long examMicros, SensorRef sensor, int state, By by, Fate fate) {}

    /** Whose change it was. */
    record By(int who, Cause cause, boolean bounce) {}

    /** What became of a change. */
    enum Fate {
        /** The unit stamped an edge. */
        STAMPED,
        /** The sensor should have shown it and did not. */
        MISSED,
        /** Another body hid it, or the sensor was in that state for the unit already. */
        HIDDEN
    }
}
