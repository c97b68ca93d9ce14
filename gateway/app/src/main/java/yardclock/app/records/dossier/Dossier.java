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
 * @param stationAlarms what the gateway warned of at stations and units in the attempt's time. It
 *     depends on everybody who was there, so it does not follow from the part of the journal here
 */
public record Dossier(
        Timeline timeline, List<String> differences, List<Timeline.FactLine> stationAlarms) {
    public Dossier {
        stationAlarms = stationAlarms == null ? List.of() : List.copyOf(stationAlarms);
        differences = differences == null ? List.of() : List.copyOf(differences);
    }

    /**
     * The sections in which two timelines are not the same, by name. What a timeline says since the
     * second version is left out where one of them is of the first.
     */
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
        if (one.further() != null && other.further() != null) {
            further(one.further(), other.further(), found);
        }
        return found;
    }

    private static void further(Further one, Further other, List<String> found) {
        compare("walls", one.walls(), other.walls(), found);
        compare("official", one.official(), other.official(), found);
        compare("passages", one.passages(), other.passages(), found);
        compare("holds", one.holds(), other.holds(), found);
        compare("calls", one.calls(), other.calls(), found);
        compare("units", one.units(), other.units(), found);
    }

    private static void compare(String what, Object one, Object other, List<String> found) {
        if (!Objects.equals(one, other)) {
            found.add(what);
        }
    }
}
