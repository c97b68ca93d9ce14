package yardclock.core.run;

/** A warning or fault as a proctor called it. */
public record CalledCriterion(
        String station, String criterion, boolean fault, TabletPress press, String person) {
    /** Gateway time of the press; −1 while it has none. */
    public long atMicros() {
        return press.isDated() ? press.stamp().micros() : -1;
    }
}
