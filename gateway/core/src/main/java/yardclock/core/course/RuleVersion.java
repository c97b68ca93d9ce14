package yardclock.core.course;

/**
 * Which wording of a trigger judged: the plan's version, and how often the trigger had been
 * adjusted on the bench since, 0 for the plan's own wording.
 */
public record RuleVersion(int plan, int adjustment) {
    @Override
    public String toString() {
        return plan + "+" + adjustment;
    }
}
