package yardclock.core.proof;

import java.util.List;
import java.util.Map;

/**
 * A proof run that two persons signed.
 *
 * @param station the one that was proven; empty for the whole course
 * @param signedMicros gateway time of the second signature
 * @param boots which start of each unit it was walked with
 * @param adjustments how often the triggers of each station had been adjusted by then
 */
public record ProofRecord(
        String station,
        ProofWhy why,
        long beganMicros,
        long signedMicros,
        List<ProofPoint> points,
        Signature first,
        Signature second,
        Map<String, String> boots,
        Map<String, Integer> adjustments) {
    public ProofRecord {
        points = List.copyOf(points);
    }

    public boolean isWhole() {
        return station.isEmpty();
    }

    boolean covers(String id) {
        return adjustments.containsKey(id);
    }

    /** How many points were seen as the plan asks. */
    public int seen() {
        return (int) points.stream().filter(p -> p.state() == ProofPoint.State.SEEN).count();
    }

    /**
     * Whether every point was seen; else it passed with the exceptions its signers gave words for.
     */
    public boolean isClean() {
        return seen() == points.size();
    }

    /** Automatic minus hand where the two were furthest apart; null where nothing was compared. */
    public Long largestMicros() {
        Long largest = null;
        for (ProofPoint point : points) {
            Long apart = point.minusHandMicros();
            boolean isLarger =
                    apart != null && (largest == null || Math.abs(apart) > Math.abs(largest));
            largest = isLarger ? apart : largest;
        }
        return largest;
    }
}
