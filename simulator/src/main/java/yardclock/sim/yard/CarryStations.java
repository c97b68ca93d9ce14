package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

import java.util.SplittableRandom;

/**
 * The stations where something is carried or dragged from one place to another. Durations in
 * microseconds; the small ones are from memory of such equipment, no source.
 */
final class CarryStations {
    private static final SensorRef CAP_BUTTON = new SensorRef("fu-01", 3);
    private static final SensorRef DRAG_MAT = new SensorRef("fu-02", 1);
    private static final SensorRef DRAG_POST = new SensorRef("fu-02", 2);
    private static final SensorRef DRAG_LINE = new SensorRef("fu-02", 3);
    private static final SensorRef POLE_MAT = new SensorRef("fu-03", 1);
    private static final int FIRST_HOLDER = 2;
    private static final int POLES = 3;
    private static final SensorRef FAN_IN_NEAR = new SensorRef("fu-07", 1);
    private static final SensorRef FAN_IN_FAR = new SensorRef("fu-07", 2);
    private static final SensorRef FAN_OUT_NEAR = new SensorRef("fu-07", 3);
    private static final SensorRef FAN_OUT_FAR = new SensorRef("fu-07", 4);

    private CarryStations() {}

    /** The horn starts it; the proctor sees the cap come off and presses the button at the end. */
    static Script hydrantWalk(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        pen.sees(takes * 8 / 10, "cap-off");
        long press = takes + HandReaction.micros(random);
        pen.first(press, CAP_BUTTON, 1);
        pen.first(press + pen.between(120_000, 350_000), CAP_BUTTON, 0);
        return pen.finishedAt(takes, press);
    }

    /** Body first, then the mannequin's legs: the line is clear only after several blocks. */
    static Script mannequinDrag(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        leaveMat(pen, DRAG_MAT);
        long turn = takes * pen.between(45, 56) / 100;
        pen.first(turn, DRAG_POST, 1);
        pen.first(turn + pen.between(300_000, 600_000), DRAG_POST, 0);
        long dummy = turn + pen.between(1_000_000, 1_800_000);
        pen.first(dummy, DRAG_POST, 1);
        pen.first(dummy + pen.between(500_000, 1_500_000), DRAG_POST, 0);
        pen.first(takes - pen.between(2_700_000, 3_200_000), DRAG_LINE, 1);
        pen.first(takes - pen.between(1_900_000, 2_400_000), DRAG_LINE, 0);
        pen.first(takes - pen.between(1_000_000, 1_500_000), DRAG_LINE, 1);
        pen.last(takes, DRAG_LINE, 0);
        return pen.finishedAt(takes);
    }

    /** Three contacts close one after the other and stay; the start mat is crossed again. */
    static Script pikePoles(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        leaveMat(pen, POLE_MAT);
        for (int pole = 1; pole <= POLES; pole++) {
            SensorRef holder = new SensorRef("fu-03", FIRST_HOLDER + pole - 1);
            long placed = takes * pole / POLES;
            if (pole < POLES) {
                pen.first(placed, holder, 1);
                crossMat(pen, placed + pen.between(4_000_000, 5_000_000));
            } else {
                pen.last(placed, holder, 1);
            }
        }
        return pen.finishedAt(takes);
    }

    private static void crossMat(Script.Pen pen, long at) {
        if (pen.oneIn(3)) {
            pen.first(at, POLE_MAT, 1);
            pen.first(at + pen.between(150_000, 600_000), POLE_MAT, 0);
        }
    }

    /** Two beams in order at each end, the proctor some steps behind breaking them too. */
    static Script fanCarry(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        walkThrough(pen, 0, FAN_IN_NEAR, FAN_IN_FAR);
        pen.sees(takes * pen.between(42, 52) / 100, "hands-changed");
        walkThrough(pen, takes, FAN_OUT_NEAR, FAN_OUT_FAR);
        if (pen.oneIn(2)) {
            walkThrough(pen, pen.between(3_000_000, 4_000_000), FAN_IN_NEAR, FAN_IN_FAR);
            walkThrough(pen, takes + pen.between(3_000_000, 4_000_000), FAN_OUT_NEAR, FAN_OUT_FAR);
        }
        return pen.finishedAt(takes);
    }

    private static void walkThrough(Script.Pen pen, long at, SensorRef near, SensorRef far) {
        long nearAt = at - pen.between(300_000, 600_000);
        pen.change(nearAt, near, 1);
        pen.change(nearAt + pen.between(700_000, 1_100_000), near, 0);
        pen.change(at, far, 1);
        pen.change(at + pen.between(700_000, 1_100_000), far, 0);
    }

    /** On the mat, sometimes at the second try and off it too soon to count, then away. */
    static void leaveMat(Script.Pen pen, SensorRef mat) {
        long on = -pen.between(3_200_000, 3_800_000);
        pen.first(on, mat, 1);
        if (pen.oneIn(3)) {
            long off = on + pen.between(100_000, 250_000);
            pen.first(off, mat, 0);
            pen.first(off + pen.between(150_000, 500_000), mat, 1);
        }
        pen.first(0, mat, 0);
    }
}
