package yardclock.core.proof;

import java.util.List;

/**
 * One person's word for what a proof run showed.
 *
 * @param words why it stands although a point is missing or apart; may be empty otherwise
 * @param atMicros gateway time
 * @param wallMicros what the wall clock read then, microseconds since 1970; for paper only
 * @param points what the person signed
 */
public record Signature(
        String person,
        String device,
        String words,
        long atMicros,
        long wallMicros,
        List<ProofPoint> points) {
    public Signature {
        points = List.copyOf(points);
    }

    /** Whether this person, or this device, signed already. */
    public boolean isBy(String otherPerson, String otherDevice) {
        return device.equals(otherDevice) || person.strip().equalsIgnoreCase(otherPerson.strip());
    }
}
