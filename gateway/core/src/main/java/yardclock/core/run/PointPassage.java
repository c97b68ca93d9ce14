package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Trigger;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TriggerJudge;

import java.util.ArrayList;
import java.util.List;

/**
 * A passage that one of a turn's triggers recognised by the plan's own rule, for those who write it
 * down.
 *
 * @param point {@code start}, {@code finish} or a checkpoint's id
 */
public record PointPassage(String point, Passage passage) {

    /**
     * Those of a turn that belongs to somebody, by point and in time order, up to its finish. What
     * is tripped after that, while the station is made ready, is nobody's passage.
     */
    public static List<PointPassage> of(Turn turn, ExamPlan plan) {
        List<PointPassage> all = new ArrayList<>();
        if (turn.number == 0) {
            return all;
        }
        long startFromMicros = Math.min(turn.startFromMicros, turn.fromMicros());
        add(turn, plan, new Sought("start", turn.station.start(), startFromMicros), all);
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            Sought sought = new Sought(checkpoint.id(), checkpoint.trigger(), turn.fromMicros());
            add(turn, plan, sought, all);
        }
        add(turn, plan, new Sought("finish", turn.station.finish(), turn.fromMicros()), all);
        return all;
    }

    private record Sought(String point, Trigger trigger, long fromMicros) {}

    private static void add(Turn turn, ExamPlan plan, Sought sought, List<PointPassage> to) {
        if (sought.trigger().contacts().isEmpty()) {
            return;
        }
        TriggerJudge judge =
                new TriggerJudge(
                        sought.trigger(), plan.timing().settleMicros(), plan.name().version());
        long untilMicros = turn.isFinished() ? turn.finish.stamp().upperMicros() : Long.MAX_VALUE;
        judge.passages(turn.evidence.inOrder(), sought.fromMicros()).stream()
                .filter(passage -> passage.stamp().micros() <= untilMicros)
                .forEach(passage -> to.add(new PointPassage(sought.point(), passage)));
    }
}
