package yardclock.app.lane;

import org.slf4j.Logger;

import java.util.HashMap;
import java.util.Map;

/**
 * Errors of adapters, written down without flooding the log: each distinct one the first time with
 * its trace, then at every power of ten with its count. Owned by the lane's thread.
 */
final class Complaints {
    private static final int DISTINCT_MAX = 200;

    private final Logger log;
    private final Map<String, Long> counts = new HashMap<>();

    Complaints(Logger log) {
        this.log = log;
    }

    void about(String adapter, RuntimeException e) {
        String key = adapter + ": " + e;
        if (counts.size() >= DISTINCT_MAX && !counts.containsKey(key)) {
            key = adapter + ": others";
        }
        long count = counts.merge(key, 1L, Long::sum);
        if (count == 1) {
            log.error("The {} failed; the lane goes on", adapter, e);
        } else if (isPowerOfTen(count)) {
            log.error("The {} failed for the {}th time: {}", adapter, count, e.toString());
        }
    }

    private static boolean isPowerOfTen(long count) {
        long rest = count;
        while (rest % 10 == 0) {
            rest /= 10;
        }
        return rest == 1;
    }
}
