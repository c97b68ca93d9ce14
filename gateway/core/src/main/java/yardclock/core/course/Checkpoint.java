package yardclock.core.course;

/**
 * A required act between a station's start and finish. Seen by its trigger, or by the proctor when
 * the trigger is judged.
 *
 * @param count how many times it must be seen
 */
public record Checkpoint(String id, Text name, int count, Trigger trigger) {

    /** The same, seen by another trigger. */
    Checkpoint seenBy(Trigger other) {
        return new Checkpoint(id, name, count, other);
    }
}
