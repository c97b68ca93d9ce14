package yardclock.core.course;

import java.util.List;

/** What may trip a sensor besides the candidate's act it is there for. */
public enum Tripper {
    /** Anybody: the proctor, a bystander, a dog. */
    PERSON,
    /** The hose, the ladder, a strap: what the candidate carries or drags. */
    TOOL,
    /** Nothing else, for practical purposes. */
    NONE;

    /** What is assumed of a kind of sensor while the plan does not say. */
    public static List<Tripper> of(SensorKind kind) {
        return switch (kind) {
            case PHOTO_EYE -> List.of(PERSON, TOOL);
            case MAT -> List.of(PERSON);
            default -> List.of(NONE);
        };
    }
}
