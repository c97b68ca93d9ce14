package yardclock.sim.stage;

import java.util.PriorityQueue;

/**
 * A stage whose time jumps from act to act: a day takes as long as its acts do. Used from one
 * thread.
 */
public final class VirtualStage implements Stage {
    private final PriorityQueue<Act> acts = new PriorityQueue<>();
    private long nowMicros;
    private final int speed;
    private long nextOrder;

    public VirtualStage(int speed) {
        this.speed = speed;
    }

    @Override
    public long nowMicros() {
        return nowMicros;
    }

    @Override
    public int speed() {
        return speed;
    }

    @Override
    public Planned at(long examMicros, Runnable what) {
        Act act = new Act(Math.max(examMicros, nowMicros), nextOrder++, what);
        acts.add(act);
        return act;
    }

    /** Plays the next act, if one is planned by then; whether there was one. */
    public boolean step(long untilMicros) {
        Act act = acts.peek();
        if (act == null || act.examMicros > untilMicros) {
            nowMicros = Math.max(nowMicros, untilMicros);
            return false;
        }
        acts.poll();
        nowMicros = act.examMicros;
        if (!act.dropped) {
            act.what.run();
        }
        return true;
    }

    /** Moves time on, playing what falls due on the way. */
    public void advanceMicros(long micros) {
        long until = nowMicros + micros;
        boolean more = true;
        while (more) {
            more = step(until);
        }
    }

    /** Plays what is due now. */
    public void settle() {
        advanceMicros(0);
    }

    private static final class Act implements Planned, Comparable<Act> {
        private final long examMicros;
        private final long order;
        private final Runnable what;
        private boolean dropped;

        Act(long examMicros, long order, Runnable what) {
            this.examMicros = examMicros;
            this.order = order;
            this.what = what;
        }

        @Override
        public void drop() {
            dropped = true;
        }

        @Override
        public int compareTo(Act other) {
            int byTime = Long.compare(examMicros, other.examMicros);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }
}
