package yardclock.core.course;

/** What a sensor is. */
public enum SensorKind {
    PHOTO_EYE,
    MAT,
    CONTACT,
    INDUCTIVE,
    TOUCH_PAD,
    PUSH_BUTTON,

    /** Stops everybody, and makes no mark. */
    STOP_BUTTON,
    VIBRATION,
    HORN,
    LIGHT
}
