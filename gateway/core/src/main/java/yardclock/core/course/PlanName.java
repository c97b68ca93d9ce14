package yardclock.core.course;

/** Which plan this is: its id, version, and where it is held. */
public record PlanName(String id, int version, Text title, String department, String yard) {}
