package yardclock.core.run;

import yardclock.core.fact.Gathering;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What time alone changes on the course. The turns that wait are kept beside all turns, because
 * after every entry somebody asks when the next of them is due.
 */
final class Waking {
    private final CourseRun course;

    /** Some of them do not wait any more; none that does is missing. */
    private final Set<Turn> waiting = new LinkedHashSet<>();

    /** Whose start signal was asked for; some of them do not wait for it any more. */
    private final Set<Attempt> signalled = new LinkedHashSet<>();

    Waking(CourseRun course) {
        this.course = course;
    }

    /** A turn was judged: it waits for a time to come, or for nothing. */
    void note(Turn turn) {
        if (turn.wakeMicros == Long.MAX_VALUE) {
            waiting.remove(turn);
        } else {
            waiting.add(turn);
        }
    }

    /** The start signal was asked for: it is missed when nothing answers in time. */
    void note(Attempt attempt) {
        signalled.add(attempt);
    }

    void forget(Turn turn) {
        waiting.remove(turn);
    }

    /** Concludes what only waited for time to pass. */
    void passTime(long nowMicros, Gathering out) {
        for (StationRun run : course.stations.values()) {
            for (Turn turn : run.turns()) {
                if (turn.wakeMicros <= nowMicros) {
                    course.judge().judge(run, turn, nowMicros, out);
                }
            }
        }
        for (Attempt attempt : signalled) {
            course.judge().missSignal(attempt, nowMicros, out);
        }
        signalled.removeIf(a -> course.judge().signalDeadlineMicros(a) == Long.MAX_VALUE);
    }

    /** When time alone changes something next; MAX for never. */
    long nextMicros() {
        long next = Long.MAX_VALUE;
        for (Turn turn : waiting) {
            next = Math.min(next, turn.wakeMicros);
        }
        for (Attempt attempt : signalled) {
            next = Math.min(next, course.judge().signalDeadlineMicros(attempt));
        }
        return next;
    }
}
