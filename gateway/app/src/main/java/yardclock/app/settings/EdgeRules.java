package yardclock.app.settings;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.EdgeRule;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;

/** Refuses an edge rule that its contact or its guards give no meaning. */
final class EdgeRules {
    private EdgeRules() {}

    static void check(Block block, Trigger trigger) {
        if (trigger.edge() == EdgeRule.FIRST) {
            return;
        }
        if (trigger.combination() != Combination.SINGLE) {
            String wrong = "only a single contact has blocks to choose from";
            block.wrong("edge", wrong, "first, or the rule single");
        }
        if (trigger.edge() == EdgeRule.RELEASE) {
            checkRelease(block, trigger);
        } else {
            checkLongest(block, trigger);
        }
    }

    private static void checkRelease(Block block, Trigger trigger) {
        if (trigger.contacts().stream().mapToInt(Contact::state).anyMatch(s -> s > 0)) {
            String wrong = "a release is the edge to open, clear or released";
            block.wrong("edge", wrong, "a contact with state open, clear or released");
        }
    }

    private static void checkLongest(Block block, Trigger trigger) {
        Guards guards = trigger.guards();
        if (guards.mergeGapMicros() == 0) {
            String wrong = "the longest of which blocks: those less than mergeGap apart";
            block.wrong("edge", wrong, "mergeGap besides");
        }
        boolean waits = guards.clearForMicros() > 0 || guards.stoodForMicros() > 0;
        if (waits || guards.staysForMicros() > 0) {
            String wrong = "the longest block is chosen by mergeGap and minBlock alone";
            block.wrong("edge", wrong, "without staysFor, clearFor and stoodFor");
        }
    }
}
