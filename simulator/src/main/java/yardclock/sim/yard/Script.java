package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One passage through one station, from a few seconds before its start to the moment everything is
 * quiet again. Built once from a seeded random source, then read.
 *
 * @param moves in the order of their offsets
 * @param presses the proctor's taps at start and finish
 * @param hasOwnTaps whether those are all the taps there are, however few; otherwise whoever is
 *     beside the candidate taps as they see it
 * @param idles what the candidate does while kept waiting for this station
 * @param finishStampMicros the offset of the edge that the finish rule should stamp; it is later
 *     than {@code finishMicros} only where a proctor's press stands for the act
 * @param finishMicros the offset at which the candidate is through and walks on
 */
public record Script(
        List<Move> moves,
        List<Sight> sights,
        List<Press> presses,
        boolean hasOwnTaps,
        List<Idle> idles,
        long finishMicros,
        long finishStampMicros) {
    public Script {
        moves = List.copyOf(moves);
        sights = List.copyOf(sights);
        presses = List.copyOf(presses);
        idles = List.copyOf(idles);
    }

    /** One that nobody taps and nobody waits for. */
    Script(List<Move> moves, List<Sight> sights, long finishMicros, long finishStampMicros) {
        this(moves, sights, List.of(), false, List.of(), finishMicros, finishStampMicros);
    }

    /** The same with other moves, and with taps and idling. */
    public Script with(List<Move> others, List<Press> taps, List<Idle> waiting) {
        List<Move> ordered = new ArrayList<>(others);
        ordered.sort(Comparator.comparingLong(Move::offsetMicros));
        return new Script(ordered, sights, taps, true, waiting, finishMicros, finishStampMicros);
    }

    /** How long before the start the first move may come. */
    public static final long LEAD_MICROS = 4_000_000;

    /** Collects moves; offsets may come in any order. */
    static final class Pen {
        private static final long SHORTEST_BOUNCE = 300;

        private final SplittableRandom random;
        private final List<Move> moves = new ArrayList<>();
        private final List<Sight> sights = new ArrayList<>();

        Pen(SplittableRandom random) {
            this.random = random;
        }

        /** A clean change. */
        void change(long offset, SensorRef sensor, int state) {
            moves.add(new Move(offset, sensor, state, false));
        }

        /** A change whose first edge counts; chatter of 1–20 ms may follow. */
        void first(long offset, SensorRef sensor, int state) {
            change(offset, sensor, state);
            long at = offset;
            for (int pairs = pairs(); pairs > 0; pairs--) {
                at += random.nextLong(1_000, 5_000);
                moves.add(new Move(at, sensor, 1 - state, true));
                at += random.nextLong(SHORTEST_BOUNCE, 4_000);
                moves.add(new Move(at, sensor, state, true));
            }
        }

        /** A change whose last edge counts; chatter of at most 20 ms comes before it. */
        void last(long offset, SensorRef sensor, int state) {
            change(offset, sensor, state);
            long at = offset;
            for (int pairs = pairs(); pairs > 0; pairs--) {
                at -= random.nextLong(SHORTEST_BOUNCE, 4_000);
                moves.add(new Move(at, sensor, 1 - state, true));
                at -= random.nextLong(1_000, 5_000);
                moves.add(new Move(at, sensor, state, true));
            }
        }

        /** None half of the time, else one or two. */
        private int pairs() {
            return Math.max(0, random.nextInt(4) - 1);
        }

        void sees(long offset, String checkpoint) {
            sights.add(new Sight(offset, checkpoint));
        }

        long between(long fewest, long most) {
            return random.nextLong(fewest, most);
        }

        boolean oneIn(int many) {
            return random.nextInt(many) == 0;
        }

        Script finishedAt(long finish) {
            return finishedAt(finish, finish);
        }

        Script finishedAt(long finish, long stamp) {
            moves.sort(Comparator.comparingLong(Move::offsetMicros));
            return new Script(moves, sights, finish, stamp);
        }
    }
}
