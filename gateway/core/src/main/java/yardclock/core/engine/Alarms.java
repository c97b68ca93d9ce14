package yardclock.core.engine;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The alarms that stand, as sentences; so many, and then the oldest give way. */
final class Alarms {
    private static final int KEPT = 50;

    private final Deque<String> standing = new ArrayDeque<>();

    void hear(Fact fact) {
        if (fact.kind() == FactKind.ALARM) {
            standing.addFirst(sentence(fact));
            if (standing.size() > KEPT) {
                standing.removeLast();
            }
        } else if (fact.kind() == FactKind.ALARM_OVER) {
            standing.remove(sentence(fact));
        }
    }

    private static String sentence(Fact alarm) {
        String who = alarm.number() == 0 ? "" : alarm.number() + " ";
        String where = (who + alarm.station()).strip();
        return where.isEmpty() ? alarm.words() : where + ": " + alarm.words();
    }

    List<String> newestFirst() {
        return List.copyOf(standing);
    }

    @Override
    public String toString() {
        return standing.toString();
    }
}
