package yardclock.core.reading;

import yardclock.core.course.Guards;
import yardclock.core.course.Text;
import yardclock.core.course.Trigger;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Weighs every reading of one start or finish.
 *
 * <p>Where others cross the sensor, only a tap tells whose passage it was: the one passage a tap
 * points at is the candidate's, whatever else came through. Two in the tap's window, none in it, or
 * no tap at all leave more than one reading plausible. Where nobody else trips the sensor, the
 * plan's rule decides, and a tap can only contradict it. Stateless, used once.
 */
public final class PointSearch {
    /** More of them tell nobody anything new; the rest is in the tray. */
    static final int READINGS_MAX = 4;

    /** A tap and a sensor nobody else trips speak of the same instant within this; our choice. */
    private static final long AGREE_MICROS = 500_000;

    /** With a dead sensor, the next one to trip it comes this long after the tap. */
    private static final long DEAD_MICROS = 10_000_000;

    /** Knocked equipment opens or closes a contact for less than this; our choice. */
    private static final long KNOCK_MICROS = 100_000;

    private static final Comparator<PointReading> BEST_FIRST =
            Comparator.comparing(PointReading::weight)
                    .reversed()
                    .thenComparing(r -> r.edge() == null ? 1 : 0)
                    .thenComparing(r -> r.edge() == null ? 0 : r.edge().stamp().micros());

    private final Trigger trigger;
    private final Crossed crossed;
    private final Possibilities possibilities;
    private final boolean isTapping;
    private final boolean isCrowded;

    /**
     * @param isTapping whether this candidate's proctor taps starts and finishes: then a missing
     *     tap says something
     * @param isCrowded whether somebody else stands by, who can be on the mat or in the beam too
     */
    public PointSearch(
            Trigger trigger,
            Crossed crossed,
            long settleMicros,
            boolean isTapping,
            boolean isCrowded) {
        this.trigger = trigger;
        this.crossed = crossed;
        this.possibilities = new Possibilities(trigger, settleMicros);
        this.isTapping = isTapping;
        this.isCrowded = isCrowded;
    }

    /**
     * @param press when the point was tapped, without a hand's own spread; null for no tap
     */
    public PointReadings search(List<TimedEdge> edges, long fromMicros, Stamp press) {
        List<PointReading> found =
                crossed.isCrossed(trigger)
                        ? crossed(possibilities.all(edges, fromMicros), press)
                        : alone(possibilities.byRule(edges, fromMicros), edges, press);
        if (found.isEmpty()) {
            return PointReadings.NONE;
        }
        Rattle rattle = new Rattle(trigger, edges);
        found.replaceAll(each -> each.isByTap() ? each : each.backTo(rattle));
        found.sort(BEST_FIRST);
        boolean isClear = found.size() == 1 && !found.get(0).isByTap();
        List<PointReading> kept = found.subList(0, Math.min(READINGS_MAX, found.size()));
        return new PointReadings(kept, isClear);
    }

    /** Nobody else trips it: the first by the plan's rule, unless a tap is far from it. */
    private List<PointReading> alone(List<Possible> possible, List<TimedEdge> edges, Stamp press) {
        List<PointReading> found = new ArrayList<>();
        if (possible.isEmpty()) {
            return byTap(press);
        }
        Possible first = possible.get(0);
        if (trigger.isJudged() || press == null) {
            found.add(of(first, Weight.CERTAIN, PointWords.NOBODY_ELSE_TRIPS_IT));
            if (isTapping && mayMislead(first, edges)) {
                found.add(tap(Weight.EDGE_MISSED, null));
            }
            return found;
        }
        if (isNear(first.edge().stamp(), press)) {
            return near(first, possible, edges, press);
        }
        boolean isDead = first.atMicros() > press.micros() + DEAD_MICROS;
        Weight odd = mayRebound() ? Weight.STRANGE_CONTACT : Weight.EDGE_MISSED;
        Weight seen = isDead ? new Weight(Weight.LEAST) : odd;
        found.add(of(first, seen, PointWords.FAR_FROM_THE_TAP));
        Possible nearest = nearest(possible, press);
        if (!nearest.equals(first)) {
            Weight near = isNear(nearest.edge().stamp(), press) ? Weight.CERTAIN : seen;
            found.add(of(nearest, near, PointWords.ALSO_NEAR_THE_TAP));
        }
        found.add(tap(mayRebound() ? Weight.EDGE_MISSED : Weight.STRANGE_CONTACT, press));
        return found;
    }

    /**
     * The tap agrees; but where the contact went back at once, a later one may be the act itself.
     */
    private List<PointReading> near(
            Possible first, List<Possible> possible, List<TimedEdge> edges, Stamp press) {
        List<PointReading> found = new ArrayList<>();
        Possible nearest = nearest(possible, press);
        boolean isKnock = isFleeting(first.edge(), edges) && !nearest.equals(first);
        Weight weight = isKnock ? Weight.STRANGE_CONTACT : Weight.CERTAIN;
        found.add(of(first, weight, PointWords.NOBODY_ELSE_TRIPS_IT));
        if (isKnock) {
            found.add(of(nearest, Weight.CERTAIN, PointWords.ALSO_NEAR_THE_TAP));
        }
        return found;
    }

    /** What must stay may have come and gone before: a going that was missed looks like a stay. */
    private boolean mayRebound() {
        return trigger.guards().staysForMicros() > 0;
    }

    /** Without the tap that should be there, a knock or a rebound looks like the act itself. */
    private boolean mayMislead(Possible first, List<TimedEdge> edges) {
        return switch (trigger.combination()) {
            case SIGNAL, JUDGED -> false;
            case SINGLE, ANY_OF -> mayRebound() || isFleeting(first.edge(), edges);
            default -> false;
        };
    }

    /** Whether the contact went back within the time a knock takes. */
    private static boolean isFleeting(TimedEdge edge, List<TimedEdge> edges) {
        int state = edge.state();
        for (TimedEdge later : edges) {
            boolean isSoon = later.stamp().micros() <= edge.stamp().micros() + KNOCK_MICROS;
            if (isSoon && later.sensor().equals(edge.sensor()) && later.compareTo(edge) > 0) {
                state = later.state();
            }
        }
        return state != edge.state();
    }

    private static boolean isNear(Stamp passage, Stamp press) {
        return Math.abs(Lag.micros(press, passage)) <= AGREE_MICROS;
    }

    private static Possible nearest(List<Possible> possible, Stamp press) {
        Possible nearest = possible.get(0);
        for (Possible each : possible) {
            long off = Math.abs(Lag.micros(press, each.edge().stamp()) - Lag.MEAN_MICROS);
            long least = Math.abs(Lag.micros(press, nearest.edge().stamp()) - Lag.MEAN_MICROS);
            nearest = off < least ? each : nearest;
        }
        return nearest;
    }

    private List<PointReading> crossed(List<Possible> possible, Stamp press) {
        if (press == null) {
            return untapped(possible);
        }
        List<PointReading> pointedAt = new ArrayList<>();
        for (Possible each : possible) {
            if (Lag.points(press, each.edge().stamp())) {
                Weight weight = Lag.weight(press, each.edge().stamp()).plus(spoiled(each));
                pointedAt.add(of(each, weight, PointWords.ALSO_NEAR_THE_TAP));
            }
        }
        if (pointedAt.size() == 1) {
            return only(pointedAt.get(0), press);
        }
        return pointedAt.isEmpty() ? beside(possible, press) : pointedAt;
    }

    /**
     * The one the tap points at. Who leaves a mat puts the heel down once more: where the mat
     * missed the foot, it shows the heel, and the tap comes early. And another body in a beam hides
     * the candidate's own edge: what is seen then is the other's release, later, or the other's
     * cut, earlier. So a tap that comes oddly for this edge lets the instant lie as far as the tap
     * points, and so does somebody who stands by; one before a release leaves the tap's own time
     * plausible.
     */
    private List<PointReading> only(PointReading only, Stamp press) {
        List<PointReading> found = new ArrayList<>();
        long lag = Lag.micros(press, only.edge().stamp());
        boolean isWhole = only.weight().equals(Lag.weight(press, only.edge().stamp()));
        Chatter chatter = only.chatter();
        if (trigger.endsBlock() && (isCrowded || lag < earlyMicros())) {
            chatter = chatter.backTo(Lag.MOST_MICROS - lag);
        } else if (!trigger.endsBlock() && (mayHide() || lag > Lag.VERY_LATE_MICROS)) {
            chatter = chatter.onTo(lag - Lag.LEAST_MICROS);
        }
        found.add(
                new PointReading(
                        only.edge(),
                        chatter,
                        only.weight(),
                        isWhole ? PointWords.BY_TAP_AND_SENSOR : PointWords.SPOILED_BUT_TAPPED,
                        only.concludesAtMicros()));
        if (trigger.endsBlock() && lag < 0) {
            found.add(tap(only.weight().plus(Weight.EDGE_MISSED), press));
        }
        return found;
    }

    /**
     * Whether another block can run into the candidate's and begin it. The plan names a shortest
     * block where something goes ahead that is shorter: with its release missed, it is not.
     */
    private boolean mayHide() {
        return isCrowded || trigger.guards().minBlockMicros() > 0;
    }

    private long earlyMicros() {
        boolean isFoot = trigger.guards().stoodForMicros() > 0;
        return isFoot ? Lag.HARDLY_LATE_MICROS : Lag.VERY_EARLY_MICROS;
    }

    /** The tap points at nothing: the sensor missed the candidate, or the tap was a slip. */
    private List<PointReading> beside(List<Possible> possible, Stamp press) {
        List<PointReading> found = byTap(press);
        for (Possible each : possible) {
            Weight weight = Lag.weight(press, each.edge().stamp()).plus(spoiled(each));
            if (weight.milliNats() > Weight.LEAST) {
                found.add(of(each, weight, PointWords.FAR_FROM_THE_TAP));
            }
        }
        return found;
    }

    /** Any of them, the first by the plan's rule before the others; and never clear. */
    private List<PointReading> untapped(List<Possible> possible) {
        List<PointReading> found = new ArrayList<>();
        if (possible.stream().noneMatch(Possible::isByRule)) {
            return found;
        }
        for (Possible each : possible) {
            Weight weight = Weight.CLOSE_CROSSING.plus(spoiled(each));
            found.add(of(each, weight, PointWords.NOBODY_TAPPED));
        }
        if (!found.isEmpty()) {
            found.add(tap(Weight.EDGE_MISSED.plus(Weight.CLOSE_CROSSING), null));
        }
        return found;
    }

    /** Every passage at the trigger, in time order; what only relaxed guards take included. */
    public List<Passage> passages(List<TimedEdge> edges, long fromMicros) {
        List<Possible> possible =
                crossed.isCrossed(trigger)
                        ? possibilities.all(edges, fromMicros)
                        : possibilities.byRule(edges, fromMicros);
        return possible.stream().map(Possible::passage).toList();
    }

    private static Weight spoiled(Possible each) {
        return each.isByRule() ? Weight.CERTAIN : Weight.GUARD_SPOILED;
    }

    private static List<PointReading> byTap(Stamp press) {
        List<PointReading> found = new ArrayList<>();
        if (press != null) {
            found.add(tap(Weight.EDGE_MISSED, press));
        }
        return found;
    }

    private static PointReading tap(Weight weight, Stamp press) {
        long at = press == null ? Long.MAX_VALUE : press.micros();
        return new PointReading(null, Chatter.NONE, weight, PointWords.ONLY_THE_TAP, at);
    }

    private PointReading of(Possible possible, Weight weight, Text why) {
        long concludes = possible.passage().concludesAtMicros();
        Chatter chatter = crossed.chatterOf(trigger);
        return new PointReading(possible.edge(), chatter, weight, why, concludes);
    }

    /** How long a fallback waits beyond the usual for what the trigger itself waits for. */
    public static long stayMicros(Trigger trigger) {
        Guards guards = trigger.guards();
        return Math.max(guards.staysForMicros(), guards.clearForMicros());
    }
}
