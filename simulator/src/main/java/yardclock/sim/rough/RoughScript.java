package yardclock.sim.rough;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.sim.yard.Bell;
import yardclock.sim.yard.Cause;
import yardclock.sim.yard.Idle;
import yardclock.sim.yard.Move;
import yardclock.sim.yard.Press;
import yardclock.sim.yard.Script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Makes one passage through a station rough. The candidate's own edges, which the plan's triggers
 * mean, stay; others come beside them, and now and then the sensor misses one.
 */
final class RoughScript {
    private static final long LEAD = Script.LEAD_MICROS - 50_000;
    private final ExamPlan plan;
    private final Station station;
    private final SplittableRandom random;
    private final Blocks blocks;
    private final List<Move> own = new ArrayList<>();

    RoughScript(ExamPlan plan, Station station, SplittableRandom random) {
        this.plan = plan;
        this.station = station;
        this.random = random;
        this.blocks = new Blocks(random);
    }

    Script of(Script kind) {
        long finish = kind.finishStampMicros();
        boolean isStood = isMat(station.start()) && station.start().contacts().get(0).state() == 0;
        if (isStood) {
            stepTwice(station.start());
        }
        if (isMat(station.finish())) {
            treadFirst(station.finish(), finish);
        }
        surround(kind, station.start(), 0);
        for (Checkpoint checkpoint : station.checkpoints()) {
            for (Contact contact : checkpoint.trigger().contacts()) {
                first(kind, contact, 0).ifPresent(at -> surround(kind, checkpoint.trigger(), at));
            }
        }
        surround(kind, station.finish(), finish);
        List<Move> moves = new ArrayList<>(kind.moves());
        moves.addAll(own);
        moves.addAll(blocks.moves());
        moves.replaceAll(move -> random.nextDouble() < Rates.MISSED ? move.unseen() : move);
        return kind.with(moves, presses(finish), idles());
    }

    private boolean isMat(Trigger trigger) {
        List<Crossed> crossed = Crossed.of(plan, trigger);
        return crossed.size() == 1 && crossed.get(0).kind() == SensorKind.MAT;
    }

    /** A foot is lifted from the mat and put back before the start; a heel comes down after it. */
    private void stepTwice(Trigger trigger) {
        SensorRef mat = trigger.contacts().get(0).sensor();
        if (random.nextDouble() < Rates.DOUBLE_STEPS) {
            long lifted = -random.nextLong(1_000_000, 2_000_000);
            long back = lifted + random.nextLong(150_000, 450_000);
            own.add(new Move(lifted, mat, 0, false));
            own.add(new Move(back, mat, 1, false));
        }
        if (random.nextDouble() < Rates.DOUBLE_STEPS) {
            long heel = random.nextLong(60_000, 250_000);
            own.add(new Move(heel, mat, 1, false));
            own.add(new Move(heel + random.nextLong(40_000, 150_000), mat, 0, false));
        }
    }

    /** The first foot touches the mat and is lifted again. */
    private void treadFirst(Trigger trigger, long finish) {
        if (random.nextDouble() < Rates.DOUBLE_STEPS) {
            SensorRef mat = trigger.contacts().get(0).sensor();
            long tread = finish - random.nextLong(450_000, 700_000);
            own.add(new Move(tread, mat, 1, false));
            own.add(new Move(tread + random.nextLong(100_000, 250_000), mat, 0, false));
        }
    }

    /** Whoever and whatever else passes the same sensors about when the candidate does. */
    private void surround(Script kind, Trigger trigger, long at) {
        List<Crossed> crossed = Crossed.of(plan, trigger);
        if (crossed.isEmpty()) {
            return;
        }
        List<Long> passes = passes(kind, trigger, crossed, at);
        if (random.nextDouble() < Rates.CROSSINGS) {
            cross(crossed, passes);
        }
        boolean isCarried =
                trigger.combination() == Combination.DIRECTION
                        || station.id().equals("ground-ladder");
        if (isCarried) {
            for (int i = 0; i < crossed.size(); i++) {
                leadBy(crossed.get(i), passes.get(i));
            }
        }
    }

    /** When the candidate passes each of them. */
    private static List<Long> passes(Script kind, Trigger trigger, List<Crossed> crossed, long at) {
        List<Long> passes = new ArrayList<>();
        for (Crossed one : crossed) {
            boolean isLast = passes.size() == crossed.size() - 1;
            long before =
                    kind.moves().stream()
                            .filter(move -> move.sensor().equals(one.sensor()))
                            .filter(move -> move.state() == 1 && move.offsetMicros() <= at)
                            .mapToLong(Move::offsetMicros)
                            .max()
                            .orElse(at);
            boolean isOnly = trigger.combination() != Combination.DIRECTION;
            passes.add(isLast || isOnly ? at : before);
        }
        return passes;
    }

    private void cross(List<Crossed> crossed, List<Long> passes) {
        long gap = random.nextLong(Rates.CROSSING_NEAREST, Rates.CROSSING_FURTHEST);
        boolean isAfter = random.nextBoolean();
        for (int i = 0; i < crossed.size(); i++) {
            Crossed one = crossed.get(i);
            long lasts = blocks.lasts(one.kind());
            long from = isAfter ? passes.get(i) + gap : passes.get(i) - gap - lasts;
            long begins = Math.max(-LEAD, from);
            blocks.block(one, begins, Math.max(begins + 100_000, from + lasts), Cause.PROCTOR);
        }
    }

    private void leadBy(Crossed beam, long at) {
        if (random.nextDouble() < Rates.LOAD_FIRST) {
            long from = at - random.nextLong(Rates.LOAD_NEAREST, Rates.LOAD_FURTHEST);
            long lasts = random.nextLong(Rates.LOAD_SHORTEST, Rates.LOAD_LONGEST);
            blocks.block(beam, from, from + lasts, Cause.LOAD);
        }
    }

    private static Optional<Long> first(Script kind, Contact contact, long from) {
        return kind.moves().stream()
                .filter(move -> move.sensor().equals(contact.sensor()))
                .filter(move -> move.state() == contact.state() && move.offsetMicros() > from)
                .map(Move::offsetMicros)
                .findFirst();
    }

    private List<Press> presses(long finish) {
        List<Press> presses = new ArrayList<>();
        tap(presses, "start", 0);
        tap(presses, "finish", finish);
        return presses;
    }

    private void tap(List<Press> presses, String point, long at) {
        long late = Rates.TAP_LATE + Math.round(Rates.TAP_DEVIATION * Bell.draw(random));
        if (random.nextDouble() >= Rates.UNTAPPED) {
            presses.add(new Press(at + late, point));
        }
    }

    private List<Idle> idles() {
        List<Idle> idles = new ArrayList<>();
        for (Trigger trigger : List.of(station.start(), station.finish())) {
            for (Crossed one : Crossed.of(plan, trigger)) {
                if (random.nextDouble() < Rates.IDLING) {
                    long from = random.nextLong(300_000, 6_000_000);
                    boolean stands = one.kind() == SensorKind.MAT && random.nextBoolean();
                    long lasts = stands ? random.nextLong(500_000, 4_000_000) : 0;
                    idles.add(new Idle(one.sensor(), from, blocks.lasts(one.kind()) + lasts));
                }
            }
        }
        return idles;
    }
}
