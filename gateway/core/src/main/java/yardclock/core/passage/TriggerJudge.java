package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.RuleVersion;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Applies one trigger to the edges of a turn.
 *
 * <p>Two steps. First the edge rule finds what could be a passage: edges at which the contacts
 * reached what the trigger asks for, or whole blocks. Then the guards strike those that do not
 * count, and join those that belong together. What is left are passages, in time order. Stateless;
 * safe from any thread.
 *
 * <p>The guards and their stamps are those of the plan's trigger language. That a count over
 * several contacts takes each contact once is our choice: three poles are three poles, however
 * often one of them rattles.
 */
public final class TriggerJudge {
    private final Trigger trigger;
    private final long settleMicros;
    private final RuleVersion version;

    /**
     * @param settleMicros how long a contrary edge may be under way after a stay's end
     */
    public TriggerJudge(Trigger trigger, long settleMicros) {
        this(trigger, settleMicros, 0);
    }

    /**
     * @param planVersion which plan the trigger is from; kept with each passage
     */
    public TriggerJudge(Trigger trigger, long settleMicros, int planVersion) {
        this.trigger = trigger;
        this.settleMicros = settleMicros;
        this.version = new RuleVersion(planVersion, trigger.adjustment());
    }

    /** The passage that makes the mark: the plan's n-th at or after {@code fromMicros}. */
    public Optional<Passage> mark(List<TimedEdge> edges, long fromMicros) {
        List<Passage> passages = spaced(passages(edges, fromMicros));
        int nth = Math.max(1, trigger.guards().nth());
        return passages.size() < nth ? Optional.empty() : Optional.of(passages.get(nth - 1));
    }

    /** Up to {@code count} passages for a checkpoint; several contacts count once each. */
    public List<Passage> counted(List<TimedEdge> edges, long fromMicros, int count) {
        List<Passage> counted = new ArrayList<>();
        boolean onceEach =
                trigger.combination() == Combination.ANY_OF && trigger.contacts().size() > 1;
        for (Passage passage : spaced(passages(edges, fromMicros))) {
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

    /** Those far enough from the last one that counted. */
    private List<Passage> spaced(List<Passage> passages) {
        long spacing = trigger.guards().spacingMicros();
        if (spacing == 0) {
            return passages;
        }
        List<Passage> spaced = new ArrayList<>();
        for (Passage passage : passages) {
            boolean isFirst = spaced.isEmpty();
            long before = isFirst ? 0 : spaced.get(spaced.size() - 1).stamp().micros();
            if (isFirst || passage.stamp().micros() - before >= spacing) {
                spaced.add(passage);
            }
        }
        return spaced;
    }

    /** Every passage at or after {@code fromMicros}, in time order. */
    public List<Passage> passages(List<TimedEdge> edges, long fromMicros) {
        List<TimedEdge> concerned = concerned(edges);
        List<Passage> passages = new ArrayList<>();
        Extent extent = new Extent(trigger, concerned);
        for (Found found : found(concerned, fromMicros, new ArrayList<>())) {
            if (extent.isFree(found)) {
                List<TimedEdge> own = extent.of(found);
                List<Block> parts = parts(found, own);
                if (!isStuck(parts)) {
                    long until = found.concludesAtMicros();
                    passages.add(new Passage(found.edge(), own, parts, until, version));
                }
            }
        }
        return passages;
    }

    private List<Block> parts(Found found, List<TimedEdge> own) {
        return found.blocks().isEmpty() ? blocks(found, own) : found.blocks();
    }

    /** Whether a block of it lasted longer than any body, tool or hand would make it. */
    private boolean isStuck(List<Block> parts) {
        long longest = trigger.site().longestBlockMicros();
        if (longest == 0) {
            return false;
        }
        for (Block part : parts) {
            if (part.from() != null && part.isOver() && part.micros() > longest) {
                return true;
            }
        }
        return false;
    }

    /** The edges at or after {@code fromMicros} that are in no passage, and what struck each. */
    public List<Struck> struck(List<TimedEdge> edges, long fromMicros) {
        List<TimedEdge> concerned = concerned(edges);
        List<Struck> moments = new ArrayList<>();
        List<TimedEdge> stuck = new ArrayList<>();
        Extent extent = new Extent(trigger, concerned);
        for (Found found : found(concerned, fromMicros, moments)) {
            if (extent.isFree(found)) {
                List<TimedEdge> own = extent.of(found);
                if (isStuck(parts(found, own))) {
                    stuck.addAll(own);
                }
            }
        }
        List<Struck> struck = new ArrayList<>();
        for (TimedEdge edge : stuck) {
            if (edge.stamp().micros() >= fromMicros) {
                struck.add(new Struck(edge, Guard.LONGEST_BLOCK));
            }
        }
        for (TimedEdge edge : extent.unclaimed()) {
            if (edge.stamp().micros() >= fromMicros) {
                struck.add(new Struck(edge, guardOf(edge, moments)));
            }
        }
        return struck;
    }

    /** What struck an edge itself, or the one of its sensor that it goes with. */
    private Guard guardOf(TimedEdge edge, List<Struck> moments) {
        if (BlockRules.concern(trigger)) {
            boolean byLength = trigger.guards().minBlockMicros() > 0;
            return byLength ? Guard.MIN_BLOCK : Guard.STOOD_FOR;
        }
        Guard guard = Guard.RULE;
        for (Struck moment : moments) {
            boolean isSame = moment.edge().sensor().equals(edge.sensor());
            if (isSame && moment.edge().compareTo(edge) <= 0) {
                guard = moment.guard();
            }
        }
        return guard;
    }

    private List<TimedEdge> concerned(List<TimedEdge> edges) {
        return edges.stream().filter(e -> contactOf(e, trigger) != null).toList();
    }

    private List<Found> found(List<TimedEdge> concerned, long fromMicros, List<Struck> struck) {
        if (BlockRules.concern(trigger)) {
            return new BlockRules(trigger, settleMicros).find(concerned, fromMicros);
        }
        Stays stays = new Stays(trigger, concerned);
        List<Found> found = new ArrayList<>();
        for (Moment moment : new Moments(trigger, concerned, fromMicros).find()) {
            Guard guard = stays.strikes(moment);
            if (guard == null) {
                long until = stays.untilMicros(moment, settleMicros);
                found.add(
                        new Found(moment.edge(), moment.first(), moment.last(), List.of(), until));
            } else {
                struck.add(new Struck(concerned.get(moment.last()), guard));
            }
        }
        return found;
    }

    /** The parts of a passage: how long the sensor that stamps was in the state that counts. */
    private List<Block> blocks(Found found, List<TimedEdge> own) {
        int state = trigger.endsBlock() ? 1 - found.edge().state() : found.edge().state();
        List<TimedEdge> same =
                own.stream().filter(e -> e.sensor().equals(found.edge().sensor())).toList();
        return same.isEmpty() ? Collections.emptyList() : Blocks.in(state, same);
    }

    static Contact contactOf(TimedEdge edge, Trigger trigger) {
        for (Contact contact : trigger.contacts()) {
            if (contact.sensor().equals(edge.sensor())) {
                return contact;
            }
        }
        return null;
    }
}
