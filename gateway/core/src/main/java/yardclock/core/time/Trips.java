package yardclock.core.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds which trip of one sensor and which of another were the same occurrence: the nearest within
 * {@link #WINDOW_MICROS}, each used once. Pure.
 *
 * <p>A contact that chatters gives several trips for one; only the first of a burst counts.
 */
public final class Trips {
    /** Clocks compared at all agree far better; a hand on two mats is worse than a contact. */
    public static final long WINDOW_MICROS = 200_000;

    /** A trip so soon after one of the same sensor is its chatter. */
    static final long CHATTER_MICROS = 500_000;

    private Trips() {}

    /** The pairs in the order of time; trips without a partner are left out. */
    public static List<Coincidence> pairs(List<Stamp> reference, List<Stamp> other) {
        List<Stamp> firsts = firstsOfBursts(reference);
        List<Stamp> partners = firstsOfBursts(other);
        List<Coincidence> pairs = new ArrayList<>();
        int from = 0;
        for (Stamp first : firsts) {
            int nearest = nearest(partners, from, first.micros());
            if (nearest >= 0) {
                pairs.add(new Coincidence(first, partners.get(nearest)));
                from = nearest + 1;
            }
        }
        return pairs;
    }

    private static List<Stamp> firstsOfBursts(List<Stamp> stamps) {
        List<Stamp> firsts = new ArrayList<>();
        long quietFrom = Long.MIN_VALUE;
        for (Stamp stamp : stamps.stream().sorted(Comparator.naturalOrder()).toList()) {
            if (stamp.micros() >= quietFrom) {
                firsts.add(stamp);
            }
            quietFrom = stamp.micros() + CHATTER_MICROS;
        }
        return firsts;
    }

    /** Bursts lie further apart than the window is wide, so the nearest is nobody else's. */
    private static int nearest(List<Stamp> partners, int from, long micros) {
        int nearest = -1;
        long least = WINDOW_MICROS + 1;
        for (int i = from; i < partners.size(); i++) {
            long apart = Math.abs(partners.get(i).micros() - micros);
            if (apart < least) {
                least = apart;
                nearest = i;
            }
        }
        return nearest;
    }
}
