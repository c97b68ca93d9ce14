package yardclock.core.proof;

import yardclock.core.run.HandMarks;
import yardclock.core.run.ProofSeen;
import yardclock.core.time.Stamp;

/**
 * What a proof run says of one start, checkpoint or finish.
 *
 * <p>One press comes late by 0.11 s with a standard deviation of 0.07 s (Am. J. Phys. 87(2) 110,
 * 2019): the instant lies between press − 0.25 s and press + 0.03 s. A point is seen when that
 * interval, widened by the tablet clock's limits, and the automatic instant's own limits meet, as
 * often as the plan asks for. Where a person's press makes the mark there is nothing to compare:
 * the wired button, or else the tablet, was pressed.
 *
 * @param count how often the plan asks for it
 * @param automatic how often its trigger saw it
 * @param pressed how often it was pressed, with a time or without
 * @param minusHandMicros automatic minus press, of the pair furthest apart; null where no two can
 *     be compared
 * @param automaticMicros gateway time of that pair's automatic instant; null as above
 */
public record ProofPoint(
        String station,
        String point,
        State state,
        int count,
        int automatic,
        int pressed,
        Long minusHandMicros,
        Long automaticMicros) {

    /** What becomes of a point in a proof run. */
    public enum State {
        SEEN,
        /** The sensor or the press is not there, or the press has no time. */
        MISSING,
        /** Both are there, and do not go together. */
        APART
    }

    static ProofPoint of(ProofSeen seen) {
        if (seen.isJudged()) {
            int there = seen.isWired() ? seen.automatic().size() : seen.presses();
            return of(seen, there >= seen.count() ? State.SEEN : State.MISSING, null, null);
        }
        int pairs = Math.min(seen.count(), seen.automatic().size());
        pairs = Math.min(pairs, seen.pressed().size());
        boolean isApart = false;
        Long furthest = null;
        Long at = null;
        for (int i = 0; i < pairs; i++) {
            Stamp sensor = seen.automatic().get(i);
            Stamp press = seen.pressed().get(i);
            isApart |= !HandMarks.mayBe(press, sensor);
            long apart = sensor.micros() - press.micros();
            if (furthest == null || Math.abs(apart) > Math.abs(furthest)) {
                furthest = apart;
                at = sensor.micros();
            }
        }
        State whole = pairs < seen.count() ? State.MISSING : State.SEEN;
        return of(seen, isApart ? State.APART : whole, furthest, at);
    }

    private static ProofPoint of(ProofSeen seen, State state, Long minusHand, Long at) {
        return new ProofPoint(
                seen.station(),
                seen.point(),
                state,
                seen.count(),
                Math.min(seen.count(), seen.automatic().size()),
                seen.presses(),
                minusHand,
                at);
    }
}
