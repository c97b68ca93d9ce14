package yardclock.core.proof;

/** A station that somebody should prove anew, and what changed there. */
public record ProofAsked(String station, Cause cause) {
    /** What the gateway knows of a repair. */
    public enum Cause {
        /** Somebody called an equipment fault there. */
        FAULT,
        /** One of its units started anew, or is another board. */
        UNIT,
        /** One of its triggers was adjusted. */
        TRIGGER
    }
}
