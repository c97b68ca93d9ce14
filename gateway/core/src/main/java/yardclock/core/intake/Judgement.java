package yardclock.core.intake;

/** What an edge turned out to be. */
public enum Judgement {
    /** New: it counts as evidence. */
    FRESH,
    /** The same key with the same content: absorbed. */
    DUPLICATE,
    /** The same key with other content: the first stands, and an alarm is raised. */
    CONFLICTING,
    /** Its tick runs backwards within the boot: not evidence, but its number is accounted for. */
    BACKWARDS
}
