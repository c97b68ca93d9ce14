package yardclock.core.run;

/** A warning or fault as a proctor called it. */
public record CalledCriterion(
        String station, String criterion, boolean fault, long atMicros, String person) {}
