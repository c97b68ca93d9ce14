package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Applies one trigger to the edges of a turn.
 *
 * <p>Two steps. First the combination finds moments: edges at which the contacts reached what the
 * trigger asks for. Then the guards strike those that do not count. What is left are passages, in
 * time order. Stateless; safe from any thread.
 *
 * <p>The guards and their stamps are those of the plan's trigger language. That a count over
 * several contacts takes each contact once is our choice: three poles are three poles, however
 * often one of them rattles.
 */
public final class TriggerJudge {
    private final Trigger trigger;
    private final long settleMicros;

    /**
     * @param settleMicros how long a contrary edge may be under way after a stay's end
     */
    public TriggerJudge(Trigger trigger, long settleMicros) {
        this.trigger = trigger;
        this.settleMicros = settleMicros;
    }

    /** The passage that makes the mark: the plan's n-th at or after {@code fromMicros}. */
    public Optional<Passage> mark(List<TimedEdge> edges, long fromMicros) {
        List<Passage> passages = passages(edges, fromMicros);
        int nth = Math.max(1, trigger.guards().nth());
        return passages.size() < nth ? Optional.empty() : Optional.of(passages.get(nth - 1));
    }

    /** Up to {@code count} passages for a checkpoint; several contacts count once each. */
    public List<Passage> counted(List<TimedEdge> edges, long fromMicros, int count) {
        List<Passage> counted = new ArrayList<>();
        boolean onceEach =
                trigger.combination() == Combination.ANY_OF && trigger.contacts().size() > 1;
        for (Passage passage : passages(edges, fromMicros)) {
            boolean isRepeat = onceEach && isAmong(counted, passage);
            if (!isRepeat && counted.size() < count) {
                counted.add(passage);
            }
        }
        return counted;
    }

    private static boolean isAmong(List<Passage> counted, Passage passage) {
        return counted.stream().anyMatch(p -> p.edge().sensor().equals(passage.edge().sensor()));
    }

    /** Every passage at or after {@code fromMicros}, in time order. */
    public List<Passage> passages(List<TimedEdge> edges, long fromMicros) {
        List<TimedEdge> concerned = edges.stream().filter(e -> contactOf(e) != null).toList();
        List<Passage> passages = new ArrayList<>();
        long lockedUntil = Long.MIN_VALUE;
        for (Moment moment : new Moments(trigger, concerned, fromMicros).find()) {
            long at = moment.edge().stamp().micros();
            if (at >= lockedUntil && holds(moment, concerned)) {
                passages.add(new Passage(moment.edge(), at + waitMicros()));
                lockedUntil = at + trigger.guards().lockoutMicros();
            }
        }
        return passages;
    }

    /** A rule that waits for nothing concludes at once; one that waits also lets edges settle. */
    private long waitMicros() {
        return stayMicros() == 0 ? 0 : stayMicros() + settleMicros;
    }

    private long stayMicros() {
        Guards guards = trigger.guards();
        long stay = Math.max(guards.staysForMicros(), guards.clearForMicros());
        return Math.max(stay, guards.minBlockMicros());
    }

    private boolean holds(Moment moment, List<TimedEdge> concerned) {
        Guards guards = trigger.guards();
        return moment.otherStateMicros() >= guards.stoodForMicros()
                && moment.otherStateMicros() >= guards.mergeGapMicros()
                && stays(moment, concerned);
    }

    /** Whether no contact that the moment rests on changes within the stay. */
    private boolean stays(Moment moment, List<TimedEdge> concerned) {
        long until = moment.edge().stamp().micros() + stayMicros();
        boolean restsOnAll = trigger.combination() == Combination.ALL_OF;
        for (int i = moment.index() + 1; i < concerned.size(); i++) {
            TimedEdge later = concerned.get(i);
            if (later.stamp().micros() >= until) {
                return true;
            }
            boolean isSame = later.sensor().equals(moment.edge().sensor());
            int wanted = restsOnAll ? contactOf(later).state() : moment.edge().state();
            boolean leaves = (isSame || restsOnAll) && later.state() != wanted;
            if (leaves && !isBridged(i, concerned)) {
                return false;
            }
        }
        return true;
    }

    /** Blocks less than the merge gap apart are one, so the gap between them ends no stay. */
    private boolean isBridged(int index, List<TimedEdge> concerned) {
        TimedEdge leaving = concerned.get(index);
        long until = leaving.stamp().micros() + trigger.guards().mergeGapMicros();
        for (int i = index + 1; i < concerned.size(); i++) {
            TimedEdge later = concerned.get(i);
            if (later.stamp().micros() >= until) {
                return false;
            }
            if (later.sensor().equals(leaving.sensor()) && later.state() != leaving.state()) {
                return true;
            }
        }
        return false;
    }

    private Contact contactOf(TimedEdge edge) {
        for (Contact contact : trigger.contacts()) {
            if (contact.sensor().equals(edge.sensor())) {
                return contact;
            }
        }
        return null;
    }
}
