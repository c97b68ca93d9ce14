package yardclock.core.run;

import yardclock.core.passage.EdgeKey;

import java.util.List;
import java.util.Optional;

/**
 * What people ruled on one turn: which rulings there are, which stands, which can be taken back.
 */
public record TurnFile(Turn turn) {
    /** The turn that holds an edge as evidence; of a sensor of two stations the first one's. */
    public static Optional<TurnFile> holding(CourseRun course, EdgeKey key) {
        for (StationRun run : course.stations()) {
            for (Turn turn : run.turns()) {
                if (turn.evidence.holds(key)) {
                    return Optional.of(new TurnFile(turn));
                }
            }
        }
        return Optional.empty();
    }

    /** All rulings in their order, whatever became of them. */
    public List<Ruling> all() {
        return turn.rulings.all();
    }

    /** The ruling that decides the split; empty while none does. */
    public Optional<Ruling> standing() {
        return turn.rulings.standing();
    }

    /** Its entry; −1 while none does. */
    public long standingEntry() {
        return turn.rulings.standingEntry();
    }

    public Optional<Ruling> ruling(long entry) {
        return turn.rulings.of(entry);
    }

    /** It decided the split, or it stands and struck edges, added a mark or assigned a passage. */
    public boolean canBeWithdrawn(Ruling ruling) {
        long entry = ruling.entry();
        boolean isOnEvidence =
                turn.strikes.made(entry) || turn.taps.isAdded(entry) || turn.assigned.made(entry);
        return ruling.state() != null || isOnEvidence;
    }

    /** The ruling that struck an edge and stands. */
    public Optional<Ruling> strikeOf(EdgeKey key) {
        return turn.strikes.of(key).flatMap(turn.rulings::of);
    }

    /** Proposed, and nothing speaks against it. */
    public static boolean isCleanAndOpen(Turn turn) {
        Split split = Splits.of(turn);
        return split.state() == SplitState.PROPOSED && split.clean();
    }
}
