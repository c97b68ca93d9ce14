package yardclock.core.run;

/**
 * A pause of one candidate that is credited. Both ends are a person's presses, a pair by one
 * person.
 *
 * @param outMicros −1 while it lasts
 */
public record Hold(long inMicros, long outMicros, String reason) {
    public boolean isOpen() {
        return outMicros < 0;
    }

    public Hold ended(long atMicros) {
        return new Hold(inMicros, Math.max(inMicros, atMicros), reason);
    }
}
