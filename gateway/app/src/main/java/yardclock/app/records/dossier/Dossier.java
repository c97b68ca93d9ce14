package yardclock.app.records.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One attempt's dossier, but for the part of the journal that goes with it.
 *
 * @param timeline what follows from the entries that go with it, alone
 * @param differences which sections come out otherwise when the whole journal is played; empty when
 *     none does. Others' entries are missing here, and rarely one of them matters
 */
public record Dossier(Timeline timeline, List<String> differences) {
    public Dossier {
        differences = differences == null ? List.of() : List.copyOf(differences);
    }

    /** The sections in which two timelines are not the same, by name. */
    public static List<String> differences(Timeline one, Timeline other) {
        List<String> found = new ArrayList<>();
        compare("number", one.number(), other.number(), found);
        compare("made", one.made(), other.made(), found);
        compare("standing", one.standing(), other.standing(), found);
        compare("turns", one.turns(), other.turns(), found);
        compare("edges", one.edges(), other.edges(), found);
        compare("rulings", one.rulings(), other.rulings(), found);
        compare("concluded", one.concluded(), other.concluded(), found);
        compare("conditions", one.conditions(), other.conditions(), found);
        return found;
    }

    private static void compare(String what, Object one, Object other, List<String> found) {
        if (!Objects.equals(one, other)) {
            found.add(what);
        }
    }
}
