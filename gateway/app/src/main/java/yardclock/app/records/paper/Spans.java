package yardclock.app.records.paper;

/** Durations in plain units. Thousandths of a second; limits are rounded outwards. */
public final class Spans {
    private static final long MILLI = 1_000;

    private Spans() {}

    /**
     * Each on one line, as {@code 41.824 s} or {@code 9 min 32.179 s}, to the nearest; a dash for
     * none (below 0).
     */
    public static String text(long micros) {
        return micros < 0 ? "–" : plain(Math.floorDiv(micros + MILLI / 2, MILLI));
    }

    /** As {@code 41.467 s … 41.976 s}. The truth lies between also after rounding. */
    public static String between(long lowerMicros, long upperMicros) {
        return plain(Math.max(0, Math.floorDiv(lowerMicros, MILLI)))
                + " … "
                + plain(Math.max(0, -Math.floorDiv(-upperMicros, MILLI)));
    }

    private static String plain(long millis) {
        long seconds = millis / 1_000;
        String minutes = seconds < 60 ? "" : seconds / 60 + "\u00A0min\u00A0";
        String thousandths = Long.toString(1_000 + millis % 1_000).substring(1);
        return minutes + seconds % 60 + "." + thousandths + "\u00A0s";
    }
}
