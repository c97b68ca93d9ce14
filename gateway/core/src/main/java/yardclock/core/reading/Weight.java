package yardclock.core.reading;

/**
 * How likely one way to understand the evidence is: the natural logarithm of a chance, in
 * thousandths, so that weights add and are compared as whole numbers. 0 is certain; −4605 is one in
 * a hundred.
 *
 * <p>Only differences matter. Where a figure is not from a named source it is our choice.
 */
public record Weight(int milliNats) implements Comparable<Weight> {
    static final Weight CERTAIN = new Weight(0);

    /** A sensor misses one edge in a hundred; our choice, and the rough day's figure. */
    static final Weight EDGE_MISSED = new Weight(-4_605);

    /** Somebody else comes through close before or after: 15 % on either side; our choice. */
    static final Weight CLOSE_CROSSING = new Weight(-1_897);

    /** A sensor nobody else trips was tripped all the same; our choice: one in a thousand. */
    static final Weight STRANGE_CONTACT = new Weight(-6_908);

    /** A guard of the plan speaks against it, and somebody else can have spoiled that guard. */
    static final Weight GUARD_SPOILED = new Weight(-2_303);

    /** Outside what is usual at the station today. */
    static final Weight UNUSUAL = new Weight(-3_000);

    /** No evidence is stronger than this: people and sensors do odd things. */
    static final int LEAST = -9_210;

    Weight plus(Weight other) {
        return new Weight(milliNats + other.milliNats);
    }

    @Override
    public int compareTo(Weight other) {
        return Integer.compare(milliNats, other.milliNats);
    }

    @Override
    public String toString() {
        return Integer.toString(milliNats);
    }
}
