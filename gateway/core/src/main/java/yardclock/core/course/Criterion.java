package yardclock.core.course;

/**
 * One thing a candidate must, must not or should do at a station.
 *
 * @param warnings how many warnings are given before the next one is a fault; 0 means at once
 */
public record Criterion(String id, CriterionKind kind, Text words, int warnings) {}
