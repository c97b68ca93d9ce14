package yardclock.core.run;

/** A warning or fault as a proctor called it. */
public record CalledCriterion(
        String station, String criterion, boolean fault, long atMicros, String person) {
    CalledCriterion movedTo(long micros) {
        return new CalledCriterion(station, criterion, fault, micros, person);
    }
}
