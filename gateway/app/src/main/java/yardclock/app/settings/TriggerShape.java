package yardclock.app.settings;

import yardclock.core.course.Combination;
import yardclock.core.course.GuardLimit;

import java.util.Arrays;
import java.util.List;

/** How many contacts each rule takes, and which guards mean anything with it. */
enum TriggerShape {
    SINGLE(1, 1, List.of("nth", "armedBy")),
    ALL_OF(2, 8, List.of("armedBy")),
    COINCIDENCE(2, 8, List.of("armedBy")),
    ANY_OF(2, 8, List.of("nth", "armedBy")),
    SEQUENCE(2, 8, List.of("armedBy")),
    DIRECTION(2, 2, List.of("stamp", "armedBy")),
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
    private final List<String> others;

    TriggerShape(int minContacts, int maxContacts, List<String> others) {
        this.minContacts = minContacts;
        this.maxContacts = maxContacts;
        this.others = others;
    }

    private List<String> guards() {
        return GUARDS.stream().filter(g -> others.contains(g) || isMeant(g)).toList();
    }

    /** Of the guards that are lengths of time, the rules themselves say it. */
    private boolean isMeant(String guard) {
        Combination combination = Combination.valueOf(name());
        return Arrays.stream(GuardLimit.values())
                .anyMatch(l -> l.word().equals(guard) && l.isMeantWith(combination));
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
            if (block.has(guard) && !guards().contains(guard)) {
                String wrong = "this guard has no meaning with the rule " + word;
                block.wrong(guard, wrong, guardsAllowed());
            }
        }
        if (this == DIRECTION && !block.has("within")) {
            block.wrong("within", "this is missing: the rule needs it", "a time such as 2 s");
        }
    }

    String guardsAllowed() {
        return guards().isEmpty() ? "no guards" : String.join(", ", guards());
    }

    String contactsAllowed() {
        return minContacts == maxContacts
                ? Integer.toString(minContacts)
                : minContacts + " to " + maxContacts;
    }
}
