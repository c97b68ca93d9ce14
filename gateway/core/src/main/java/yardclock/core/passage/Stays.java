package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;

import java.util.List;

/** The guards on what was before a moment and what comes after it. Stateless. */
final class Stays {
    private final Trigger trigger;
    private final Guards guards;
    private final List<TimedEdge> concerned;
    private final boolean restsOnAll;

    Stays(Trigger trigger, List<TimedEdge> concerned) {
        this.trigger = trigger;
        this.guards = trigger.guards();
        this.concerned = concerned;
        this.restsOnAll =
                trigger.combination() == Combination.ALL_OF
                        || trigger.combination() == Combination.COINCIDENCE;
    }

    /** The guard that strikes a moment, or null. */
    Guard strikes(Moment moment) {
        if (moment.otherStateMicros() < guards.stoodForMicros()) {
            return Guard.STOOD_FOR;
        }
        if (moment.otherStateMicros() < guards.mergeGapMicros()) {
            return Guard.MERGE_GAP;
        }
        if (stays(moment)) {
            return null;
        }
        return guards.staysForMicros() >= guards.minBlockMicros()
                ? Guard.STAYS_FOR
                : Guard.MIN_BLOCK;
    }

    /** A rule that waits for nothing concludes at once; one that waits also lets edges settle. */
    long untilMicros(Moment moment, long settleMicros) {
        long at = concerned.get(moment.last()).stamp().micros();
        return stayMicros() == 0 ? at : at + stayMicros() + settleMicros;
    }

    private long stayMicros() {
        return Math.max(guards.staysForMicros(), guards.minBlockMicros());
    }

    /** Whether no contact that the moment rests on changes within the stay. */
    private boolean stays(Moment moment) {
        TimedEdge reached = concerned.get(moment.last());
        long until = reached.stamp().micros() + stayMicros();
        for (int i = moment.last() + 1; i < concerned.size(); i++) {
            TimedEdge later = concerned.get(i);
            if (later.stamp().micros() >= until) {
                return true;
            }
            boolean isSame = later.sensor().equals(reached.sensor());
            int wanted =
                    restsOnAll ? TriggerJudge.contactOf(later, trigger).state() : reached.state();
            boolean leaves = (isSame || restsOnAll) && later.state() != wanted;
            if (leaves && !isBridged(i)) {
                return false;
            }
        }
        return true;
    }

    /** Blocks less than the merge gap apart are one, so the gap between them ends no stay. */
    private boolean isBridged(int index) {
        TimedEdge leaving = concerned.get(index);
        long until = leaving.stamp().micros() + guards.mergeGapMicros();
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
}
