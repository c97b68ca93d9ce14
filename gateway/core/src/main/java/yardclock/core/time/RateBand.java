package yardclock.core.time;

import java.util.Arrays;

/**
 * All straight clocks that no message contradicts: a linear program over two variables, the offset
 * at one tick and the rate, solved exactly.
 *
 * <p>Every downlink leg says that the clock line lies above a point, every uplink leg that it lies
 * below one. For a fixed rate the offset then lies between the highest of the lower lines and the
 * lowest of the upper ones; both are piecewise straight in the rate, so the extremes lie in their
 * corners. Offsets are microseconds, rates are parts per one.
 *
 * @param lowest the lowest offset any feasible rate allows
 * @param highest the highest one
 * @param rateLow the lowest feasible rate
 * @param rateHigh the highest one
 * @param centreRate the rate that leaves the most room
 * @param centre the offset in the middle of that room
 */
record RateBand(
        double lowest,
        double highest,
        double rateLow,
        double rateHigh,
        double centreRate,
        double centre) {

    /**
     * @param lower for each rate the offset's lower limit, convex
     * @param upperNegated for each rate minus the offset's upper limit, convex
     * @param slowest the lowest rate to look at
     * @param fastest the highest
     * @return null when no rate between the two leaves any room: a contradiction
     */
    static RateBand solve(
            LineEnvelope lower, LineEnvelope upperNegated, double slowest, double fastest) {
        double[] corners = corners(lower, upperNegated, slowest, fastest);
        double[] least = lower.at(corners);
        double[] mostNegated = upperNegated.at(corners);
        double[] room = new double[corners.length];
        int best = 0;
        for (int i = 0; i < corners.length; i++) {
            room[i] = -mostNegated[i] - least[i];
            best = room[i] > room[best] ? i : best;
        }
        if (room[best] < 0) {
            return null;
        }
        double from = edge(corners, room, best, -1);
        double to = edge(corners, room, best, 1);
        double lowest = Math.min(lower.at(from), lower.at(to));
        double highest = Math.max(-upperNegated.at(from), -upperNegated.at(to));
        for (int i = 0; i < corners.length; i++) {
            if (corners[i] >= from && corners[i] <= to) {
                lowest = Math.min(lowest, least[i]);
                highest = Math.max(highest, -mostNegated[i]);
            }
        }
        double centre = (least[best] - mostNegated[best]) / 2;
        return new RateBand(lowest, highest, from, to, corners[best], centre);
    }

    private static double[] corners(
            LineEnvelope a, LineEnvelope b, double slowest, double fastest) {
        double[] corners = new double[a.corners() + b.corners() + 2];
        int n = 0;
        corners[n++] = slowest;
        corners[n++] = fastest;
        for (LineEnvelope envelope : new LineEnvelope[] {a, b}) {
            for (int i = 0; i < envelope.corners(); i++) {
                double corner = envelope.corner(i);
                if (corner > slowest && corner < fastest) {
                    corners[n++] = corner;
                }
            }
        }
        double[] used = Arrays.copyOf(corners, n);
        Arrays.sort(used);
        return used;
    }

    /** From the best corner outwards: the last rate that still leaves room. */
    private static double edge(double[] corners, double[] room, int best, int step) {
        int i = best;
        while (i + step >= 0 && i + step < corners.length) {
            double here = room[i];
            double there = room[i + step];
            if (there < 0) {
                double part = here / (here - there);
                return corners[i] + part * (corners[i + step] - corners[i]);
            }
            i += step;
        }
        return corners[i];
    }
}
