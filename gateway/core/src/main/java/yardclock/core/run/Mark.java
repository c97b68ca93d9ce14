package yardclock.core.run;

import yardclock.core.time.Stamp;

/** A reconciled instant of a run, and where it came from. */
public record Mark(Stamp stamp, Source source) {
    /** What a mark rests on. */
    public enum Source {
        /** A trigger's own edge. */
        AUTOMATIC,
        /** A wired button pressed by a person. */
        BUTTON,
        /** A tap on a tablet. */
        TAP,
        /** A ruling gave it. */
        RULED
    }

    public boolean isByHand() {
        return source != Source.AUTOMATIC;
    }
}
