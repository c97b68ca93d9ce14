package yardclock.app.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Everything that is wrong in one plan or roster file, in the order of its lines. Empty when the
 * file can be used.
 *
 * @param more how many problems were found beyond those kept
 */
public record PlanProblems(String file, List<PlanProblem> list, int more) {
    public PlanProblems {
        List<PlanProblem> sorted = new ArrayList<>(list);
        sorted.sort(Comparator.comparingInt(PlanProblem::line));
        list = List.copyOf(sorted);
    }

    static PlanProblems none(String file) {
        return new PlanProblems(file, List.of(), 0);
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** All problems as readable text, one a line, with a line before them that counts them. */
    public String text() {
        if (isEmpty()) {
            return file + ": no problems found.\n";
        }
        int all = list.size() + more;
        String head = file + " is refused: " + (all == 1 ? "1 problem" : all + " problems") + ".\n";
        String lines = list.stream().map(p -> p.text() + "\n").collect(Collectors.joining());
        return head + lines + (more > 0 ? "… and " + more + " more.\n" : "");
    }
}
