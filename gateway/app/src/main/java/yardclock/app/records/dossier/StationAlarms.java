package yardclock.app.records.dossier;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;

import java.util.ArrayList;
import java.util.List;

/**
 * What was said of stations and field units as the day went: warnings and their ends, silence, and
 * who went on by hand. It depends on everybody who was there. One thread.
 */
final class StationAlarms {
    private static final List<String> LASTING = List.of("alarm", "unit-silent", "go-on-by-hand");

    private final List<Timeline.FactLine> all = new ArrayList<>();

    void hear(Timeline.FactLine fact, FactKind kind, boolean isOfUnits) {
        if (isOfUnits || kind == FactKind.ALARM || kind == FactKind.ALARM_OVER) {
            all.add(fact);
        }
    }

    void goesOn(Entry entry, Act.GoOnByHand act, Input.Enrolled by) {
        String words =
                by.person()
                        + " ("
                        + by.role().word()
                        + "): "
                        + act.reason().word()
                        + (act.words().isEmpty() ? "" : ", " + act.words());
        all.add(
                new Timeline.FactLine(
                        entry.number(),
                        entry.gatewayMicros(),
                        act.kind().word(),
                        act.station(),
                        "",
                        -1,
                        -1,
                        -1,
                        0,
                        words));
    }

    /** Those between two instants, and before them those that still held at the first one. */
    List<Timeline.FactLine> during(long fromMicros, long untilMicros) {
        List<Timeline.FactLine> told = new ArrayList<>();
        for (Timeline.FactLine fact : all) {
            if (fact.gatewayMicros() > untilMicros) {
                break;
            }
            if (fact.gatewayMicros() < fromMicros) {
                told.removeIf(before -> isSame(before, fact));
                boolean lasts = LASTING.contains(fact.kind());
                if (lasts && !fact.where().isEmpty()) {
                    told.add(fact);
                }
            } else {
                told.add(fact);
            }
        }
        return told;
    }

    private static boolean isSame(Timeline.FactLine one, Timeline.FactLine other) {
        boolean isBack = one.kind().equals("unit-silent") && !other.kind().equals("alarm");
        return one.where().equals(other.where()) && (isBack || one.words().equals(other.words()));
    }
}
