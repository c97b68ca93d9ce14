package yardclock.core.health;

/**
 * When a jump of a unit's counter is told: the first, the second, the fourth, the eighth and so on,
 * so that a counter that jumps with each answer does not push everything else off the bench.
 */
public final class JumpAlarm {
    private long known;

    /** Whether the newest of so many jumps is to be told; a new boot counts from none again. */
    public boolean isToTell(long jumps) {
        boolean isNew = jumps > known;
        known = jumps;
        return isNew && Long.bitCount(jumps) == 1;
    }

    /** Whether there were more jumps than were known. */
    public boolean isNews(long jumps) {
        return jumps != known;
    }

    @Override
    public String toString() {
        return Long.toString(known);
    }
}
