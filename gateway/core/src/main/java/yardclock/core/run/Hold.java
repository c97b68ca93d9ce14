package yardclock.core.run;

import yardclock.core.time.Carry;

/**
 * A pause of one candidate that is credited. Both ends are a person's presses, a pair by one
 * person.
 *
 * @param outMicros −1 while it lasts
 * @param inLine the gateway's time line at the one end, {@code outLine} at the other
 */
public record Hold(long inMicros, long outMicros, String reason, int inLine, int outLine) {
    public boolean isOpen() {
        return outMicros < 0;
    }

    static Hold begun(long atMicros, String reason, int line) {
        return new Hold(atMicros, -1, reason, line, line);
    }

    Hold ended(long atMicros, int line) {
        return new Hold(inMicros, Math.max(inMicros, atMicros), reason, inLine, line);
    }

    Hold carried(Carry carry) {
        long out = isOpen() ? outMicros : outMicros + carry.of(outLine);
        return new Hold(inMicros + carry.of(inLine), out, reason, inLine, outLine);
    }
}
