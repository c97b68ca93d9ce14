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

    private static final Comparator<PointReading> BEST_FIRST =
            Comparator.comparing(PointReading::weight)
                    .reversed()
                    .thenComparing(r -> r.edge() == null ? 1 : 0)
                    .thenComparing(r -> r.edge() == null ? 0 : r.edge().stamp().micros());

    private final Trigger trigger;
    private final boolean isCrossed;
    private final Possibilities possibilities;

    public PointSearch(Trigger trigger, boolean isCrossed, long settleMicros) {
        this.trigger = trigger;
        this.isCrossed = isCrossed;
        this.possibilities = new Possibilities(trigger, settleMicros);
    }

    /**
     * @param press when the point was tapped, without a hand's own spread; null for no tap
     */
    public PointReadings search(List<TimedEdge> edges, long fromMicros, Stamp press) {
        List<PointReading> found =
                isCrossed
                        ? crossed(possibilities.all(edges, fromMicros), press)
                        : alone(possibilities.byRule(edges, fromMicros), press);
        if (found.isEmpty()) {
            return PointReadings.NONE;
        }
        found.sort(BEST_FIRST);
        boolean isClear = found.size() == 1 && !found.get(0).isByTap();
        List<PointReading> kept = found.subList(0, Math.min(READINGS_MAX, found.size()));
        return new PointReadings(kept, isClear);
    }

    /** Nobody else trips it: the first by the plan's rule, unless a tap is far from it. */
    private List<PointReading> alone(List<Possible> possible, Stamp press) {
        List<PointReading> found = new ArrayList<>();
        if (possible.isEmpty()) {
            return byTap(press);
        }
        Possible first = possible.get(0);
        boolean isSigned = trigger.isJudged() || press == null;
        if (isSigned || isNear(first.edge().stamp(), press)) {
            found.add(of(first, Weight.CERTAIN, PointWords.NOBODY_ELSE_TRIPS_IT));
            return found;
        }
        boolean isDead = first.atMicros() > press.micros() + DEAD_MICROS;
        Weight seen = isDead ? new Weight(Weight.LEAST) : Weight.EDGE_MISSED;
        found.add(of(first, seen, PointWords.FAR_FROM_THE_TAP));
        Possible nearest = nearest(possible, press);
        if (!nearest.equals(first)) {
            Weight near = isNear(nearest.edge().stamp(), press) ? Weight.CERTAIN : seen;
            found.add(of(nearest, near, PointWords.ALSO_NEAR_THE_TAP));
        }
        found.add(tap(Weight.STRANGE_CONTACT, press));
        return found;
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
            PointReading only = pointedAt.get(0);
            boolean isWhole = only.weight().equals(Lag.weight(press, only.edge().stamp()));
            pointedAt.set(0, worded(only, isWhole));
            return pointedAt;
        }
        return pointedAt.isEmpty() ? beside(possible, press) : pointedAt;
    }

    private static PointReading worded(PointReading only, boolean isWhole) {
        return new PointReading(
                only.edge(),
                only.weight(),
                isWhole ? PointWords.BY_TAP_AND_SENSOR : PointWords.SPOILED_BUT_TAPPED,
                only.concludesAtMicros());
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
                isCrossed
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
        return new PointReading(null, weight, PointWords.ONLY_THE_TAP, at);
    }

    private PointReading of(Possible possible, Weight weight, Text why) {
        return new PointReading(
                possible.edge(), weight, why, possible.passage().concludesAtMicros());
    }

    /** How long a fallback waits beyond the usual for what the trigger itself waits for. */
    public static long stayMicros(Trigger trigger) {
        Guards guards = trigger.guards();
        return Math.max(guards.staysForMicros(), guards.clearForMicros());
    }
}
