package yardclock.core.course;

/** Words shown to people, in both languages of the day. */
public record Text(String en, String es) {}
