package yardclock.core.course;

/** What a sensor is. */
public enum SensorKind {
    PHOTO_EYE,
    MAT,
    CONTACT,
    INDUCTIVE,
    TOUCH_PAD,
    PUSH_BUTTON,
    VIBRATION,
    HORN,
    LIGHT
}
