package yardclock.core.readiness;

import yardclock.core.course.Condition;

/** What is underfoot: one of these, whatever the sun and the wind do besides. */
public enum Ground {
    DRY(Condition.DRY),
    WET(Condition.WET),
    ICE(Condition.ICE);

    private final Condition condition;

    Ground(Condition condition) {
        this.condition = condition;
    }

    Condition condition() {
        return condition;
    }
}
