package yardclock.sim.stage;

import java.util.PriorityQueue;

/**
 * A stage whose time jumps from act to act: a day takes as long as its acts do. Used from one
 * thread.
 */
public final class VirtualStage implements Stage {
    private final PriorityQueue<PlannedAct> acts = new PriorityQueue<>();
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
        PlannedAct act = new PlannedAct(Math.max(examMicros, nowMicros), nextOrder++, what);
        acts.add(act);
        return act;
    }

    /** Plays the next act, if one is planned by then; whether there was one. */
    public boolean step(long untilMicros) {
        PlannedAct act = acts.peek();
        if (act == null || act.examMicros() > untilMicros) {
            nowMicros = Math.max(nowMicros, untilMicros);
            return false;
        }
        acts.poll();
        nowMicros = act.examMicros();
        act.play();
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
}
