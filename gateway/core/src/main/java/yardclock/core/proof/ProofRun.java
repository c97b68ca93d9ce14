package yardclock.core.proof;

import java.util.List;
import java.util.Optional;

/**
 * A proof run under way.
 *
 * @param station the one that is proven; empty for the whole course
 * @param beganMicros gateway time
 * @param person who began it
 * @param first the first signature; null before
 */
public record ProofRun(
        String station, ProofWhy why, long beganMicros, String person, Signature first) {

    public boolean isWhole() {
        return station.isEmpty();
    }

    ProofRun signed(Signature signature) {
        return new ProofRun(station, why, beganMicros, person, signature);
    }

    /** The first signature, while what was signed is what is seen now. */
    public Optional<Signature> standing(List<ProofPoint> now) {
        return Optional.ofNullable(first).filter(signature -> signature.points().equals(now));
    }
}
