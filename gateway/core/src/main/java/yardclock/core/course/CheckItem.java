package yardclock.core.course;

/**
 * One item of the start-of-day checklist: somebody answers for it by name before the first release.
 *
 * @param words what must be there, as a person reads it before they sign
 */
public record CheckItem(String id, Text words) {}
