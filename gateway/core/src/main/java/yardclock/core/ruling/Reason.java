package yardclock.core.ruling;

/** The closed list of reasons a ruling can give; words may be added. */
public enum Reason {
    SENSOR_FAILED,
    SENSOR_TRIPPED_BY_OTHER,
    REQUIRED_ACT_NOT_DONE,
    STATION_NOT_READY,
    EQUIPMENT_FAULT,
    WEATHER,
    MEDICAL,
    STAFFING,
    COURSE_BLOCKED,
    OTHER
}
