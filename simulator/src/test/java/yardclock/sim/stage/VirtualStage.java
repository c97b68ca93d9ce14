package yardclock.sim.stage;

import java.util.PriorityQueue;

/** A stage whose time stands still until a test moves it on. One thread. */
public final class VirtualStage implements Stage {
    private final PriorityQueue<Act> acts = new PriorityQueue<>();
    private final int speed;
    private long now;
    private long order;

    public VirtualStage(int speed) {
        this.speed = speed;
    }

    private record Act(long at, long order, Runnable what, boolean[] dropped)
            implements Comparable<Act> {
        @Override
        public int compareTo(Act other) {
            int byTime = Long.compare(at, other.at);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }

    @Override
    public long nowMicros() {
        return now;
    }

    @Override
    public int speed() {
        return speed;
    }

    @Override
    public Planned at(long examMicros, Runnable act) {
        boolean[] dropped = new boolean[1];
        acts.add(new Act(examMicros, order++, act, dropped));
        return () -> dropped[0] = true;
    }

    /** Moves time on, running what falls due on the way. */
    public void advanceMicros(long micros) {
        long until = now + micros;
        while (!acts.isEmpty() && acts.peek().at() <= until) {
            Act act = acts.poll();
            now = Math.max(now, act.at());
            if (!act.dropped()[0]) {
                act.what().run();
            }
        }
        now = until;
    }

    /** Runs what is due now. */
    public void settle() {
        advanceMicros(0);
    }
}
