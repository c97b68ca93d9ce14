package yardclock.core.run;

import yardclock.core.course.Text;
import yardclock.core.reading.PointReading;
import yardclock.core.reading.PointReadings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The readings of an ambiguous split: each plausible start with each plausible finish. Pure. */
public final class SplitReadings {
    /** More tell a person nothing new. */
    private static final int MAX = 4;

    private SplitReadings() {}

    /**
     * One way to understand a split.
     *
     * @param words why start and finish may have been these
     */
    public record SplitReading(
            long micros, long lowerMicros, long upperMicros, Text words, Mark start, Mark finish) {}

    private record Weighed(SplitReading reading, long weight) {}

    /** Best first; empty while there is nothing to choose. */
    public static List<SplitReading> of(Turn turn) {
        if (!turn.isAmbiguous()) {
            return List.of();
        }
        List<Weighed> all = new ArrayList<>();
        for (PointReading start : turn.startReadings.ranked()) {
            for (PointReading finish : finishes(turn.finishReadings)) {
                Mark from = mark(start, turn.start, turn.startTap());
                Mark to =
                        finish == null ? turn.finish : mark(finish, turn.finish, turn.finishTap());
                Elapsed elapsed = turn.times.of(from, to);
                if (elapsed != null && elapsed.micros() > 0) {
                    Text words = words(turn, start, finish);
                    all.add(new Weighed(reading(elapsed, words, from, to), weight(start, finish)));
                }
            }
        }
        all.sort(Comparator.comparingLong(Weighed::weight).reversed());
        return all.stream().limit(MAX).map(Weighed::reading).toList();
    }

    /** A finish that was judged has no readings: it stands. */
    private static List<PointReading> finishes(PointReadings readings) {
        List<PointReading> finishes = new ArrayList<>(readings.ranked());
        if (finishes.isEmpty()) {
            finishes.add(null);
        }
        return finishes;
    }

    /** The mark a reading would make; the one that stands, where it is the same edge. */
    private static Mark mark(PointReading reading, Mark stands, Mark tap) {
        if (reading.isByTap()) {
            return tap;
        }
        boolean isSame = stands != null && reading.edge().equals(stands.edge());
        return isSame ? stands : Mark.automatic(reading.edge());
    }

    private static Text words(Turn turn, PointReading start, PointReading finish) {
        boolean isStartOpen = turn.startReadings.isOpen();
        if (isStartOpen && turn.finishReadings.isOpen()) {
            return new Text(
                    "start: " + start.why().en() + "; finish: " + finish.why().en(),
                    "salida: " + start.why().es() + "; llegada: " + finish.why().es());
        }
        return finish == null || isStartOpen ? start.why() : finish.why();
    }

    private static long weight(PointReading start, PointReading finish) {
        long weight = start.weight().milliNats();
        return finish == null ? weight : weight + finish.weight().milliNats();
    }

    private static SplitReading reading(Elapsed elapsed, Text words, Mark start, Mark finish) {
        return new SplitReading(
                elapsed.micros(),
                Math.max(0, elapsed.lowerMicros()),
                Math.max(0, elapsed.upperMicros()),
                words,
                start,
                finish);
    }
}
