package yardclock.core.run;

import yardclock.core.passage.TimedEdge;
import yardclock.core.reading.Chatter;
import yardclock.core.time.Carry;
import yardclock.core.time.Stamp;

/**
 * A reconciled instant of a run, and where it came from.
 *
 * <p>The first stamp is provisional. Minutes later exchanges on both sides of the edge give a final
 * one; both are kept, and {@link #best()} is the one that counts. A mark that was ruled on keeps
 * the value that was seen: see {@link #asSeen()}.
 *
 * @param stamp the provisional stamp, a person's own spread included
 * @param edge the edge it rests on; null where a person made it
 * @param press who pressed, null where nobody did
 * @param settled the final stamp, a person's spread included; null while there is none
 * @param line the gateway's time line that both stamps are on
 * @param chatter how far from its edge it can lie because the sensor may have missed one; both
 *     stamps have it
 */
public record Mark(
        Stamp stamp,
        Source source,
        TimedEdge edge,
        Press press,
        Stamp settled,
        int line,
        Chatter chatter) {
    /** By a person, or of a sensor that does not chatter. */
    Mark(Stamp stamp, Source source, TimedEdge edge, Press press, Stamp settled, int line) {
        this(stamp, source, edge, press, settled, line, Chatter.NONE);
    }

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

    /**
     * A person's part in a mark.
     *
     * @param device the tablet that was pressed; empty for a wired button
     * @param allowanceMicros what the plan adds on both sides for a judged finish
     */
    public record Press(String device, long allowanceMicros) {}

    static Mark automatic(TimedEdge edge) {
        return automatic(edge, Chatter.NONE);
    }

    static Mark automatic(TimedEdge edge, Chatter chatter) {
        Stamp stamp = edge.stamp().widened(chatter.beforeMicros(), chatter.afterMicros());
        return new Mark(stamp, Source.AUTOMATIC, edge, null, null, edge.line(), chatter);
    }

    public boolean isByHand() {
        return source != Source.AUTOMATIC;
    }

    /** The final stamp if there is one, or else the provisional one. */
    public Stamp best() {
        return settled == null ? stamp : settled;
    }

    public boolean isSettled() {
        return settled != null || edge == null;
    }

    /** The same occurrence, whether settled or not. */
    boolean isSame(Mark other) {
        return other != null
                && stamp.equals(other.stamp)
                && source == other.source
                && (edge == null ? other.edge == null : edge.equals(other.edge));
    }

    /** With the final stamp of its edge. */
    Mark settledAt(Stamp edgeStamp) {
        Stamp last =
                press == null
                        ? edgeStamp.widened(chatter.beforeMicros(), chatter.afterMicros())
                        : HandMarks.pressed(edgeStamp, press);
        return new Mark(stamp, source, edge, press, last, line, chatter);
    }

    /** What a ruling keeps: the value that counted when it was made. */
    Mark asSeen() {
        return settled == null ? this : new Mark(settled, source, edge, press, null, line, chatter);
    }

    /** The same mark where its time line was moved to. */
    Mark carried(Carry carry) {
        long by = carry.of(line);
        TimedEdge moved = edge == null ? null : edge.moved(by);
        Stamp last = settled == null ? null : settled.moved(by);
        return new Mark(stamp.moved(by), source, moved, press, last, line, chatter);
    }

    /** The mark that stands, as its clock says in the end; null while that is open. */
    static Mark settled(Mark stands, Mark derived) {
        if (stands == null || stands.edge() == null) {
            return stands;
        }
        boolean isFinal =
                derived != null
                        && stands.edge().equals(derived.edge())
                        && derived.settled() != null;
        return isFinal ? derived : null;
    }

    /** Whether the intervals overlap, so that either may have been first. */
    static boolean isTie(Mark one, Mark other) {
        return one != null
                && other != null
                && one.best().lowerMicros() <= other.best().upperMicros()
                && other.best().lowerMicros() <= one.best().upperMicros();
    }
}
