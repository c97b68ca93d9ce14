package yardclock.sim.yard;

import yardclock.core.course.SensorRef;

import java.util.SplittableRandom;

/**
 * The stations where something is crawled under, lifted, struck, shouldered or rolled. Durations in
 * microseconds; the small ones are from memory of such equipment, no source.
 */
final class LiftStations {
    private static final SensorRef DECK_BEAM = new SensorRef("fu-04", 1);
    private static final SensorRef DECK_PAD = new SensorRef("fu-04", 2);
    private static final SensorRef DECK_MAT = new SensorRef("fu-04", 3);
    private static final SensorRef BAG_BOTTOM = new SensorRef("fu-05", 1);
    private static final SensorRef BAG_TOP = new SensorRef("fu-06", 1);
    private static final SensorRef WEDGE_HOME = new SensorRef("fu-08", 1);
    private static final SensorRef WEDGE_END = new SensorRef("fu-08", 2);
    private static final SensorRef LEFT_BRACKET = new SensorRef("fu-09", 1);
    private static final SensorRef RIGHT_BRACKET = new SensorRef("fu-09", 2);
    private static final SensorRef LADDER_POST = new SensorRef("fu-10", 1);
    private static final SensorRef ROLL_MAT = new SensorRef("fu-11", 1);
    private static final SensorRef ROLL_BOX = new SensorRef("fu-11", 2);

    private LiftStations() {}

    /** In through the beam, limb by limb; the pad; out the same way and onto the mat. */
    static Script lowDeck(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        pen.change(0, DECK_BEAM, 1);
        pen.change(pen.between(350_000, 600_000), DECK_BEAM, 0);
        pen.change(pen.between(700_000, 900_000), DECK_BEAM, 1);
        pen.change(pen.between(1_400_000, 2_200_000), DECK_BEAM, 0);
        long touch = takes * pen.between(46, 55) / 100;
        pen.first(touch, DECK_PAD, 1);
        pen.first(touch + pen.between(200_000, 900_000), DECK_PAD, 0);
        pen.change(takes - pen.between(2_600_000, 3_200_000), DECK_BEAM, 1);
        pen.change(takes - pen.between(1_000_000, 1_600_000), DECK_BEAM, 0);
        pen.last(takes, DECK_MAT, 1);
        pen.first(takes + pen.between(1_200_000, 2_500_000), DECK_MAT, 0);
        return pen.finishedAt(takes);
    }

    /** Off the bottom contact, up to the top one, down again; it may bump on the way. */
    static Script ropeBag(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        pen.first(0, BAG_BOTTOM, 0);
        long top = takes * pen.between(50, 62) / 100;
        pen.first(top, BAG_TOP, 1);
        pen.first(top + pen.between(600_000, 1_500_000), BAG_TOP, 0);
        pen.first(takes, BAG_BOTTOM, 1);
        return pen.finishedAt(takes);
    }

    /** The block leaves home at the first blow, hits the end, rebounds, and at last stays. */
    static Script wedgeDrive(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        pen.first(0, WEDGE_HOME, 0);
        long rebound = takes;
        for (int i = pen.oneIn(3) ? 2 : 1; i > 0; i--) {
            rebound -= pen.between(900_000, 1_300_000);
            pen.first(rebound, WEDGE_END, 1);
            pen.first(rebound + pen.between(40_000, 160_000), WEDGE_END, 0);
        }
        pen.last(takes, WEDGE_END, 1);
        return pen.finishedAt(takes);
    }

    /** One bracket opens, then the other; round the post; back on one hook, then on both. */
    static Script groundLadder(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        boolean leftFirst = pen.oneIn(2);
        SensorRef early = leftFirst ? LEFT_BRACKET : RIGHT_BRACKET;
        SensorRef late = leftFirst ? RIGHT_BRACKET : LEFT_BRACKET;
        pen.first(0, early, 0);
        pen.first(pen.between(150_000, 700_000), late, 0);
        long post = takes * pen.between(45, 56) / 100;
        pen.change(post, LADDER_POST, 1);
        pen.change(post + pen.between(300_000, 900_000), LADDER_POST, 0);
        pen.first(takes - pen.between(400_000, 1_600_000), early, 1);
        pen.last(takes, late, 1);
        return pen.finishedAt(takes);
    }

    /** Off the mat, rolled, shown to the proctor, carried to the box and set in. */
    static Script rollUp(long takes, SplittableRandom random) {
        Script.Pen pen = new Script.Pen(random);
        CarryStations.leaveMat(pen, ROLL_MAT);
        pen.sees(takes - pen.between(10_000_000, 12_000_000), "accepted");
        pen.first(takes, ROLL_BOX, 1);
        return pen.finishedAt(takes);
    }
}
