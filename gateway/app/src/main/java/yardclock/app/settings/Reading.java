package yardclock.app.settings;

import java.util.Objects;

/**
 * What became of reading a file: the value, or all problems. Never both, never neither. Immutable.
 */
public final class Reading<T> {
    private final T value;
    private final PlanProblems problems;

    private Reading(T value, PlanProblems problems) {
        this.value = value;
        this.problems = problems;
    }

    static <T> Reading<T> of(T value, String file) {
        return new Reading<>(Objects.requireNonNull(value), PlanProblems.none(file));
    }

    static <T> Reading<T> refused(PlanProblems problems) {
        if (problems.isEmpty()) {
            throw new IllegalStateException("refused without a problem: " + problems.file());
        }
        return new Reading<>(null, problems);
    }

    public boolean isRefused() {
        return value == null;
    }

    /** The value; asking for it after a refusal is a mistake of the caller. */
    public T value() {
        if (value == null) {
            throw new IllegalStateException(problems.text());
        }
        return value;
    }

    /** Every problem; empty when there is a value. */
    public PlanProblems problems() {
        return problems;
    }
}
