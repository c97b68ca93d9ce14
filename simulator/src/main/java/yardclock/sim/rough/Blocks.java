package yardclock.sim.rough;

import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorRef;
import yardclock.sim.yard.Cause;
import yardclock.sim.yard.Move;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Collects blocks of sensors, with the chatter of 1–20 ms a mat has at each edge. */
final class Blocks {
    private static final long GAP_SHORTEST = 1_000;
    private static final long GAP_LONGEST = 9_000;
    private final SplittableRandom random;
    private final List<Move> moves = new ArrayList<>();

    Blocks(SplittableRandom random) {
        this.random = random;
    }

    /** Somebody blocks a sensor and leaves it. */
    void block(Crossed at, long from, long until, Cause cause) {
        moves.add(new Move(from, at.sensor(), 1, false, cause, false));
        moves.add(new Move(until, at.sensor(), 0, false, cause, false));
        if (at.kind() == SensorKind.MAT) {
            chatter(at.sensor(), from, 1, cause);
            chatter(at.sensor(), until, 0, cause);
        }
    }

    private void chatter(SensorRef sensor, long after, int state, Cause cause) {
        if (random.nextBoolean()) {
            long there = after + random.nextLong(GAP_SHORTEST, GAP_LONGEST);
            long back = there + random.nextLong(GAP_SHORTEST, GAP_LONGEST);
            moves.add(new Move(there, sensor, 1 - state, true, cause, false));
            moves.add(new Move(back, sensor, state, true, cause, false));
        }
    }

    /** As long as somebody of a person's size needs. */
    long lasts(SensorKind kind) {
        return kind == SensorKind.MAT
                ? random.nextLong(Rates.STEP_SHORTEST, Rates.STEP_LONGEST)
                : random.nextLong(Rates.BODY_SHORTEST, Rates.BODY_LONGEST);
    }

    List<Move> moves() {
        return moves;
    }
}
