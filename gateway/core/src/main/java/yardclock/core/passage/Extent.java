package yardclock.core.passage;

import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a passage reaches: which edges belong to it besides the one that stamps. Walks forward
 * with the passages of one trigger, so that no edge belongs to two of them. Used once.
 */
final class Extent {
    private final Trigger trigger;
    private final List<TimedEdge> edges;
    private final boolean[] claimed;
    private long lockedUntilMicros = Long.MIN_VALUE;

    Extent(Trigger trigger, List<TimedEdge> edges) {
        this.trigger = trigger;
        this.edges = edges;
        this.claimed = new boolean[edges.size()];
    }

    /** Whether the lock-out of the passage before has not taken it in. */
    boolean isFree(Found found) {
        return found.micros() >= lockedUntilMicros;
    }

    /** The edges of the next passage, which are taken then. */
    List<TimedEdge> of(Found found) {
        lockedUntilMicros = found.micros() + trigger.guards().lockoutMicros();
        List<TimedEdge> own = new ArrayList<>();
        for (int i = found.first(); i <= found.last(); i++) {
            claim(i, own);
        }
        trail(found, own);
        return own;
    }

    /** What follows it: parts less than the merge gap apart, the end of its blocks, the rattle. */
    private void trail(Found found, List<TimedEdge> own) {
        List<TimedEdge> ended = new ArrayList<>();
        boolean isOver = !found.blocks().isEmpty() || trigger.endsBlock();
        for (int i = found.last() + 1; i < edges.size(); i++) {
            TimedEdge edge = edges.get(i);
            boolean isLocked = edge.stamp().micros() < lockedUntilMicros;
            if (!isLocked && (isOver || ended.size() >= sensors())) {
                return;
            }
            if (isLocked || concerns(found, edge) && isOpen(edge, ended)) {
                claim(i, own);
            }
            note(found, edge, ended);
        }
    }

    private int sensors() {
        return isOfAll() ? trigger.contacts().size() : 1;
    }

    private boolean isOfAll() {
        return switch (trigger.combination()) {
            case ALL_OF, COINCIDENCE, SEQUENCE, DIRECTION -> true;
            default -> false;
        };
    }

    private boolean concerns(Found found, TimedEdge edge) {
        return isOfAll() || edge.sensor().equals(found.edge().sensor());
    }

    /** Up to the first return that is no part of the block any more. */
    private static boolean isOpen(TimedEdge edge, List<TimedEdge> ended) {
        for (TimedEdge end : ended) {
            if (end.sensor().equals(edge.sensor())) {
                return false;
            }
        }
        return true;
    }

    /** A contact's part is over with the edge that leaves its state and is not bridged. */
    private void note(Found found, TimedEdge edge, List<TimedEdge> ended) {
        boolean leaves =
                concerns(found, edge)
                        && edge.state() != TriggerJudge.contactOf(edge, trigger).state();
        if (leaves && isOpen(edge, ended) && !isBridged(edge)) {
            ended.add(edge);
        }
    }

    private boolean isBridged(TimedEdge leaving) {
        long gap = trigger.guards().mergeGapMicros();
        long until = leaving.stamp().micros() + gap;
        return gap > 0
                && edges.stream()
                        .filter(e -> e.sensor().equals(leaving.sensor()))
                        .filter(e -> e.compareTo(leaving) > 0 && e.state() != leaving.state())
                        .anyMatch(e -> e.stamp().micros() < until);
    }

    private void claim(int i, List<TimedEdge> own) {
        if (!claimed[i]) {
            claimed[i] = true;
            own.add(edges.get(i));
        }
    }

    /** The edges no passage has taken. */
    List<TimedEdge> unclaimed() {
        List<TimedEdge> left = new ArrayList<>();
        for (int i = 0; i < claimed.length; i++) {
            if (!claimed[i]) {
                left.add(edges.get(i));
            }
        }
        return left;
    }
}
