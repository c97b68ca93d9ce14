package yardclock.core.readiness;

import java.util.Locale;

/** Who stands by. A state of the day, not a tick in the morning. */
public enum Team {
    MEDICAL(true),
    COURSE_CREW(true),

    /** The climb is a part of its own: without its crew nobody climbs, and the course goes on. */
    CLIMB_CREW(false);

    private final boolean neededOnCourse;

    Team(boolean neededOnCourse) {
        this.neededOnCourse = neededOnCourse;
    }

    /** Whether nobody new is released while this team is away. */
    public boolean isNeededOnCourse() {
        return neededOnCourse;
    }

    /** The word in JSON, as {@code course-crew}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
