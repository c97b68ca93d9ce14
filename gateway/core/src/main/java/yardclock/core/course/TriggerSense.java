package yardclock.core.course;

import java.util.ArrayList;
import java.util.List;

/** Finds guards and edge rules that a trigger's contacts, or each other, give no meaning. */
public final class TriggerSense {
    private final Trigger trigger;
    private final List<Senseless> found = new ArrayList<>();

    private TriggerSense(Trigger trigger) {
        this.trigger = trigger;
    }

    /**
     * One thing that makes no sense.
     *
     * @param key what it is said of, as the plan has it
     * @param wrong why it makes none
     * @param allowed what would
     */
    public record Senseless(String key, String wrong, String allowed) {}

    /** All that makes no sense in a trigger; empty where everything does. */
    public static List<Senseless> of(Trigger trigger) {
        TriggerSense sense = new TriggerSense(trigger);
        sense.stays();
        sense.edge();
        return List.copyOf(sense.found);
    }

    /** Whether a technician may give a trigger these guards. */
    public static boolean admits(Trigger trigger, GuardTimes wanted) {
        for (GuardLimit limit : GuardLimit.values()) {
            if (!limit.admits(trigger, limit.of(wanted))) {
                return false;
            }
        }
        return of(trigger.guarded(trigger.guards().timed(wanted))).isEmpty();
    }

    private void wrong(String key, String wrong, String allowed) {
        found.add(new Senseless(key, wrong, allowed));
    }

    private void stays() {
        Guards guards = trigger.guards();
        boolean isOpen = trigger.contacts().stream().mapToInt(Contact::state).noneMatch(s -> s > 0);
        String open = "a contact with state open, clear or released";
        if (guards.clearForMicros() > 0 && !isOpen) {
            wrong("clearFor", "a sensor stays clear only when it is clear", open);
        }
        if (guards.stoodForMicros() > 0 && !isOpen) {
            wrong("stoodFor", "this guard needs the release that follows the standing", open);
        }
        if (guards.clearForMicros() > 0 && guards.staysForMicros() > 0) {
            wrong("clearFor", "clearFor and staysFor say the same twice", "one of them");
        }
    }

    private void edge() {
        if (trigger.edge() == EdgeRule.FIRST) {
            return;
        }
        if (trigger.combination() != Combination.SINGLE) {
            String wrong = "only a single contact has blocks to choose from";
            wrong("edge", wrong, "first, or the rule single");
        }
        if (trigger.edge() == EdgeRule.RELEASE) {
            release();
        } else {
            longest();
        }
    }

    private void release() {
        if (trigger.contacts().stream().mapToInt(Contact::state).anyMatch(s -> s > 0)) {
            String wrong = "a release is the edge to open, clear or released";
            wrong("edge", wrong, "a contact with state open, clear or released");
        }
    }

    private void longest() {
        Guards guards = trigger.guards();
        if (guards.mergeGapMicros() == 0) {
            String wrong = "the longest of which blocks: those less than mergeGap apart";
            wrong("edge", wrong, "mergeGap besides");
        }
        boolean waits = guards.clearForMicros() > 0 || guards.stoodForMicros() > 0;
        if (waits || guards.staysForMicros() > 0) {
            String wrong = "the longest block is chosen by mergeGap and minBlock alone";
            wrong("edge", wrong, "without staysFor, clearFor and stoodFor");
        }
    }
}
