package yardclock.app.settings;

import yardclock.core.course.Combination;

import java.util.List;

/** How many contacts each rule takes, and which guards mean anything with it. */
enum TriggerShape {
    SINGLE(
            1,
            1,
            List.of(
                    "lockout",
                    "staysFor",
                    "clearFor",
                    "stoodFor",
                    "minBlock",
                    "mergeGap",
                    "nth",
                    "spacing",
                    "armedBy")),
    ALL_OF(2, 8, List.of("lockout", "staysFor", "armedBy")),
    COINCIDENCE(2, 8, List.of("lockout", "staysFor", "minBlock", "within", "armedBy")),
    ANY_OF(2, 8, List.of("lockout", "minBlock", "mergeGap", "nth", "spacing", "armedBy")),
    SEQUENCE(2, 8, List.of("lockout", "staysFor", "armedBy")),
    DIRECTION(2, 2, List.of("lockout", "minBlock", "within", "stamp", "armedBy")),
    SIGNAL(1, 1, List.of()),
    JUDGED(0, 8, List.of("armedBy"));

    static final List<String> GUARDS =
            List.of(
                    "lockout",
                    "staysFor",
                    "clearFor",
                    "stoodFor",
                    "minBlock",
                    "mergeGap",
                    "within",
                    "nth",
                    "spacing",
                    "stamp",
                    "armedBy");

    private final int minContacts;
    private final int maxContacts;
    private final List<String> guards;

    TriggerShape(int minContacts, int maxContacts, List<String> guards) {
        this.minContacts = minContacts;
        this.maxContacts = maxContacts;
        this.guards = guards;
    }

    static TriggerShape of(Combination rule) {
        return valueOf(rule.name());
    }

    /** Refuses contacts and guards that would have no meaning under this rule. */
    void check(Block block, String word, int contacts) {
        if (contacts < minContacts || contacts > maxContacts) {
            String wrong = "the rule " + word + " does not go with " + contacts + " contacts";
            block.wrong("contacts", wrong, contactsAllowed());
        }
        for (String guard : GUARDS) {
            if (block.has(guard) && !guards.contains(guard)) {
                String wrong = "this guard has no meaning with the rule " + word;
                block.wrong(guard, wrong, guardsAllowed());
            }
        }
        if (this == DIRECTION && !block.has("within")) {
            block.wrong("within", "this is missing: the rule needs it", "a time such as 2 s");
        }
    }

    String guardsAllowed() {
        return guards.isEmpty() ? "no guards" : String.join(", ", guards);
    }

    String contactsAllowed() {
        return minContacts == maxContacts
                ? Integer.toString(minContacts)
                : minContacts + " to " + maxContacts;
    }
}
