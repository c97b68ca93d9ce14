package yardclock.core.ruling;

import java.util.Locale;

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
    OTHER;

    /** The word in JSON, as {@code sensor-failed}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
