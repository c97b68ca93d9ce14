package yardclock.sim.stage;

/** An act and its instant; those of one instant are played in the order they were planned. */
final class PlannedAct implements Stage.Planned, Comparable<PlannedAct> {
    private final long examMicros;
    private final long order;
    private final Runnable what;
    private volatile boolean dropped;

    PlannedAct(long examMicros, long order, Runnable what) {
        this.examMicros = examMicros;
        this.order = order;
        this.what = what;
    }

    long examMicros() {
        return examMicros;
    }

    /** Plays it, unless it was dropped. */
    void play() {
        if (!dropped) {
            what.run();
        }
    }

    @Override
    public void drop() {
        dropped = true;
    }

    @Override
    public int compareTo(PlannedAct other) {
        int byTime = Long.compare(examMicros, other.examMicros);
        return byTime != 0 ? byTime : Long.compare(order, other.order);
    }
}
