package yardclock.core.course;

/**
 * The guards of a trigger that are lengths of time, in microseconds; 0 for one that is not used.
 * These are what a technician may adjust on the bench. What is counted, and what must have been
 * seen before, is the exam's own and stays as the plan has it.
 *
 * @see Guards
 */
public record GuardTimes(
        long lockoutMicros,
        long staysForMicros,
        long clearForMicros,
        long stoodForMicros,
        long minBlockMicros,
        long mergeGapMicros,
        long withinMicros,
        long spacingMicros) {}
