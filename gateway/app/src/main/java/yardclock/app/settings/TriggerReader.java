package yardclock.app.settings;

import yardclock.app.settings.ContactReader.Placed;
import yardclock.core.course.Combination;
import yardclock.core.course.DayRules.StartKind;
import yardclock.core.course.EdgeRule;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;
import yardclock.core.course.TriggerSense;

import java.util.List;
import java.util.Optional;

/**
 * Reads triggers, and refuses those that could never make the mark they are for: a sensor that is
 * not wired, a guard that has no meaning with the rule, a checkpoint that comes later.
 */
final class TriggerReader {
    /** What the trigger's mark is. */
    enum Role {
        FIRST_START,
        START,
        CHECKPOINT,
        FINISH
    }

    private final SiteReader sites;
    private final ContactReader contacts;
    private final StartKind startKind;

    TriggerReader(Wiring wiring, ContactReader contacts, StartKind startKind) {
        this.sites = new SiteReader(wiring);
        this.contacts = contacts;
        this.startKind = startKind;
    }

    /**
     * Reads one trigger.
     *
     * @param seen the checkpoints of the station that come before this mark
     */
    Trigger read(Block block, Role role, List<String> seen) {
        Optional<Combination> rule = block.word("rule", Combination.class);
        List<Block> places = block.blocks("contacts", "contact", PlanLimits.CONTACTS);
        List<Placed> placed = contacts.read(places);
        Trigger trigger =
                new Trigger(
                        rule.orElse(Combination.SINGLE),
                        block.word("edge", EdgeRule.class, EdgeRule.FIRST),
                        ContactReader.contacts(placed),
                        guards(block),
                        sites.read(block),
                        block.text("words", PlanLimits.WORDS),
                        0);
        block.close();
        if (rule.isPresent()) {
            TriggerShape.of(rule.get()).check(block, Value.word(rule.get()), places.size());
            contacts.check(placed, rule.get());
            checkRole(block, rule.get(), role);
            if (rule.get() == Combination.JUDGED) {
                checkJudged(block, role, placed);
            }
        }
        TriggerSense.of(trigger).forEach(s -> block.wrong(s.key(), s.wrong(), s.allowed()));
        checkArmedBy(block, trigger.guards().armedBy(), role, seen);
        return trigger;
    }

    private static Guards guards(Block block) {
        return new Guards(
                block.time("lockout", PlanLimits.LOCKOUT, 0),
                block.time("staysFor", PlanLimits.STAYS_FOR, 0),
                block.time("clearFor", PlanLimits.CLEAR_FOR, 0),
                block.time("stoodFor", PlanLimits.STOOD_FOR, 0),
                block.time("minBlock", PlanLimits.MIN_BLOCK, 0),
                block.time("mergeGap", PlanLimits.MERGE_GAP, 0),
                block.time("within", PlanLimits.WITHIN, 0),
                (int) block.count("nth", PlanLimits.NTH, 1),
                block.time("spacing", PlanLimits.SPACING, 0),
                (int) block.count("stamp", PlanLimits.STAMP, 0),
                block.id("armedBy", ""));
    }

    private void checkRole(Block block, Combination rule, Role role) {
        boolean isSignal = rule == Combination.SIGNAL;
        if (isSignal && role != Role.FIRST_START) {
            String wrong = "the start signal is given once, at the first station's start";
            block.wrong("rule", wrong, "another rule");
        }
        if (role == Role.CHECKPOINT && block.has("nth")) {
            block.wrong("nth", "a checkpoint says how often it is seen by its count", "count");
        }
        if (role != Role.FIRST_START) {
            return;
        }
        if (startKind == StartKind.SIGNAL && !isSignal && rule != Combination.JUDGED) {
            String wrong = "day.startKind says that a signal starts the clock";
            block.wrong("rule", wrong, "signal, or judged for spoken start words");
        }
        if (startKind == StartKind.FIRST_MOVEMENT && isSignal) {
            String wrong = "day.startKind says that the first movement starts the clock";
            block.wrong("rule", wrong, "a rule on a sensor");
        }
    }

    /** A judged start or checkpoint is a tap on the proctor's tablet, in the proctor's order. */
    private static void checkJudged(Block block, Role role, List<Placed> placed) {
        if (role != Role.FINISH && !placed.isEmpty()) {
            String wrong = "a wired button can only press a finish; here the tablet is pressed";
            block.wrong("contacts", wrong, "leave it out");
        }
        if (role == Role.CHECKPOINT && block.has("armedBy")) {
            String wrong = "the proctor sees for themselves what came before";
            block.wrong("armedBy", wrong, "leave it out");
        }
    }

    private static void checkArmedBy(Block block, String name, Role role, List<String> seen) {
        if (!block.has("armedBy")) {
            return;
        }
        if (role == Role.START || role == Role.FIRST_START) {
            block.wrong("armedBy", "no checkpoint can be seen before the start", "leave it out");
            return;
        }
        if (!name.isEmpty() && !seen.contains(name)) {
            String allowed =
                    seen.isEmpty() ? "leave it out: there is none" : String.join(", ", seen);
            block.wrong("armedBy", "\"" + name + "\" is no earlier checkpoint here", allowed);
        }
    }
}
