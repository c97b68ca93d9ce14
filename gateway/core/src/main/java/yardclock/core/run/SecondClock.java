package yardclock.core.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How a proctor's taps lie to the automatic marks of the same instants, over the day. Integers.
 *
 * <p>One press is late by 0.11 s with a standard deviation of 0.07 s (Am. J. Phys. 87(2) 110,
 * 2019). So a bias far from that, or one that moves, speaks of the trigger or of the person.
 *
 * @param station the station's id; empty where this is about a proctor
 * @param point {@code start} or {@code finish}; empty where this is about a proctor
 * @param device the proctor's tablet; empty where this is about a station
 * @param count how many instants were both tapped and seen
 * @param biasMicros the median of tap minus automatic
 * @param spreadMicros the median distance from that, as a standard deviation (times 1.4826)
 * @param newestMicros the median of the newest twelve; the bias while there are fewer
 * @param drifts whether the newest twelve lie elsewhere than the first twelve did
 */
public record SecondClock(
        String station,
        String point,
        String device,
        int count,
        long biasMicros,
        long spreadMicros,
        long newestMicros,
        boolean drifts) {
    /** Twelve presses have a median known to about 0.025 s. */
    static final int STRETCH = 12;

    /** Three standard deviations of the difference of two such medians; our choice. */
    static final long DRIFT_MICROS = 110_000;

    /** What a set of differences is about. */
    record About(String station, String point, String device) {}

    /**
     * @param differences tap minus automatic, in the order of the day; at least one
     */
    static SecondClock of(About about, List<Long> differences) {
        int count = differences.size();
        long bias = median(differences);
        List<Long> distances = new ArrayList<>();
        differences.forEach(each -> distances.add(Math.abs(each - bias)));
        int stretch = Math.min(STRETCH, count);
        long first = median(differences.subList(0, stretch));
        long newest = median(differences.subList(count - stretch, count));
        boolean drifts = count >= 2 * STRETCH && Math.abs(newest - first) > DRIFT_MICROS;
        return new SecondClock(
                about.station(),
                about.point(),
                about.device(),
                count,
                bias,
                median(distances) * 14_826 / 10_000,
                count < STRETCH ? bias : newest,
                drifts);
    }

    private static long median(List<Long> values) {
        List<Long> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : Math.floorDiv(sorted.get(half - 1) + sorted.get(half), 2);
    }
}
