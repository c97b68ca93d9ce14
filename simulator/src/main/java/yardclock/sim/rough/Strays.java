package yardclock.sim.rough;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorKind;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.Cause;
import yardclock.sim.yard.Move;
import yardclock.sim.yard.Yard;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Dogs, passers-by and paper in the wind, at random moments of the day and at any beam or mat; and,
 * more rarely, equipment that is knocked so that a contact opens or closes for a moment.
 */
public final class Strays {
    private final Stage stage;
    private final Yard yard;
    private final List<Crossed> crossed;
    private final List<Crossed> contacts;
    private final SplittableRandom random;
    private final long everyMicros;
    private int strays;
    private int jostles;
    private boolean over;

    public Strays(Stage stage, Yard yard, ExamPlan plan, long seed) {
        this.stage = stage;
        this.yard = yard;
        this.crossed = Crossed.all(plan);
        this.contacts = Crossed.contacts(plan);
        this.random = new SplittableRandom(seed ^ 0x5752_4159L);
        long passage = plan.day().releaseIntervalMicros() / Rates.PASSAGES;
        this.everyMicros = Math.round(passage * 100 / (Rates.STRAYS + Rates.JOSTLES));
    }

    public void begin() {
        long next = Math.round(-everyMicros * StrictMath.log(1 - random.nextDouble()));
        stage.afterMicros(
                next,
                () -> {
                    if (!over) {
                        come();
                        begin();
                    }
                });
    }

    /** The yard is closed; nobody comes any more. */
    public void end() {
        over = true;
    }

    private void come() {
        Blocks blocks = new Blocks(random);
        boolean isKnock = random.nextDouble() * (Rates.STRAYS + Rates.JOSTLES) < Rates.JOSTLES;
        List<Crossed> where = isKnock ? contacts : crossed;
        Crossed at = where.get(random.nextInt(where.size()));
        if (isKnock) {
            jostles++;
            blocks.block(at, 0, random.nextLong(5_000, 80_000), Cause.JOSTLE);
        } else {
            strays++;
            pass(blocks, at);
        }
        int who = -(strays + jostles);
        long now = stage.nowMicros();
        for (Move move : blocks.moves()) {
            boolean isMissed = random.nextDouble() < Rates.MISSED;
            yard.plan(who, isMissed ? move.unseen() : move, now);
        }
    }

    private void pass(Blocks blocks, Crossed at) {
        int kind = random.nextInt(3);
        if (kind == 0 && at.kind() == SensorKind.PHOTO_EYE) {
            blocks.block(at, 0, random.nextLong(20_000, 120_000), Cause.STRAY);
        } else if (kind == 1) {
            long fore = random.nextLong(80_000, 200_000);
            long hind = fore + random.nextLong(60_000, 160_000);
            blocks.block(at, 0, fore, Cause.STRAY);
            blocks.block(at, hind, hind + random.nextLong(80_000, 200_000), Cause.STRAY);
        } else {
            blocks.block(at, 0, blocks.lasts(at.kind()), Cause.STRAY);
        }
    }

    /** How many came so far to sensors that people cross. */
    public int strays() {
        return strays;
    }

    public int jostles() {
        return jostles;
    }
}
