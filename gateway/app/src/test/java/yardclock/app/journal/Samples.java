package yardclock.app.journal;

import yardclock.core.course.RosterLine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.intake.AnswerRefusal;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.List;

/** Invented inputs, one of each kind that needs no plan, and batches of edges. */
final class Samples {
    private Samples() {}

    static Input.Edge edge(long seq) {
        return new Input.Edge("fu-01", "0011223344556677", seq, 3, (int) (seq % 2), seq * 1_000);
    }

    /** Edges as the entries {@code from} to {@code to}, both included. */
    static List<Entry> edges(long from, long to) {
        List<Entry> entries = new ArrayList<>();
        for (long n = from; n <= to; n++) {
            entries.add(new Entry(n, n * 10, edge(n)));
        }
        return entries;
    }

    static List<Input> oneOfEachKindWithoutPlan() {
        return List.of(
                new Input.Epoch("boot", "process", 1_700_000_000_000_000L, 5, 10, false, "1"),
                new Input.WallStepped(5, 1_700_000_003_600_000L, -80_000),
                new Input.RosterFrozen(List.of(new RosterLine(12, 1)), "ab"),
                edge(7),
                new Input.Health(
                        "fu-01", "b", 1, 2, 3300, -61, 0, 90_000, "1.0", 1, List.of(0, -1), "ap-1"),
                new Input.UnitDown("fu-01"),
                new Input.ExchangeAnswered("fu-01", "b", "x1", 1, 2, 3, 4),
                new Input.AnswerRefused("fu-01", "b", "x1", AnswerRefusal.AGAIN, 2),
                new Input.TabletExchange("d1", "p1", "x2", 1, 2, 3, 4),
                new Input.Climate("yard", 2_950, 4_100, 3_600, null, null, 9),
                new Input.CodeIssued("c0", Role.PROCTOR, ""),
                new Input.Enrolled("d1", "Rowan", Role.PROCTOR, "c0", "t0"),
                new Input.Ruling("key", "d1", "b", 0, 99, -1, new Act.Release(12, "d1")),
                new Input.SettingsApplied("fu-01", 3, null),
                new Input.Deadline());
    }

    static List<Entry> numbered(List<? extends Input> inputs) {
        List<Entry> entries = new ArrayList<>();
        for (Input input : inputs) {
            long number = entries.size() + 1L;
            entries.add(new Entry(number, number * 10, input));
        }
        return entries;
    }
}
