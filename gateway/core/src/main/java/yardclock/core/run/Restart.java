package yardclock.core.run;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.time.Carry;

import java.util.ArrayList;
import java.util.List;

/**
 * What the last break of the gateway's time means for those on the course.
 *
 * <p>At first nobody knows how long it lasted: no time is told across it. As soon as a counter that
 * ran on ties the two time lines, what was known before is moved onto the present line, so that old
 * and new instants can be compared again. Times across the break then carry the tie's interval.
 */
final class Restart {
    private final CourseRun course;
    private final List<Attempt> concerned = new ArrayList<>();
    private long beganMicros;
    private boolean isCarried;
    private Tie told = Tie.UNKNOWN;

    private enum Tie {
        UNKNOWN(""),
        KNOWN(
                "The restart is bridged by units or tablets that ran on: times across it are known"
                        + " again, with a wider interval."),
        CONTRADICTED(
                "Field units contradict each other about how long the gateway was away: no time is"
                        + " told across the restart. Use hand times, and look at their clocks.");

        private final String words;

        Tie(String words) {
            this.words = words;
        }
    }

    Restart(CourseRun course) {
        this.course = course;
    }

    void begin(long nowMicros, Gathering out) {
        course.lines.begin();
        beganMicros = nowMicros;
        isCarried = false;
        told = Tie.UNKNOWN;
        concerned.clear();
        for (Attempt attempt : course.attempts.values()) {
            if (attempt.isOnCourse() && !attempt.turns.isEmpty()) {
                concerned.add(attempt);
                attempt.revision++;
                String words = "The gateway's clock was interrupted during this run.";
                out.conclude(Fact.of(FactKind.ALARM, attempt.number, "", words));
            }
        }
    }

    boolean tied(long nowMicros, Gathering out) {
        Carry carry = course.lines.carry();
        if (!carry.isEmpty()) {
            move(carry);
            isCarried = true;
        }
        tell(out);
        if (!carry.isEmpty()) {
            judgeAnew(nowMicros, out);
        }
        return !carry.isEmpty();
    }

    private void move(Carry carry) {
        long others = isCarried ? 0 : carry.ofNewest();
        course.everyRun().forEach(a -> a.carry(carry, at -> moved(at, others)));
        course.stations.values().forEach(s -> s.carry(carry, at -> moved(at, others)));
        course.account.carry(carry);
        course.proofTurns().carry(carry);
        course.lastReleaseMicros = moved(course.lastReleaseMicros, others);
    }

    /**
     * Presses and arrivals do not know their line. A new line never begins before the last entry of
     * the one before, so up to the first move its beginning tells them apart; afterwards they stay,
     * since a later move is by milliseconds. Below zero stands for none.
     */
    private long moved(long atMicros, long byMicros) {
        return atMicros < 0 || atMicros >= beganMicros ? atMicros : atMicros + byMicros;
    }

    private void tell(Gathering out) {
        Tie now = now();
        if (now == told) {
            return;
        }
        told = now;
        for (Attempt attempt : concerned) {
            attempt.revision++;
            course.tellOfficialTime(attempt, out);
        }
        if (!concerned.isEmpty() && now != Tie.UNKNOWN) {
            out.conclude(Fact.of(FactKind.ALARM, 0, "", now.words));
        }
    }

    private Tie now() {
        if (course.lines.isContradicted()) {
            return Tie.CONTRADICTED;
        }
        return course.lines.isTied() ? Tie.KNOWN : Tie.UNKNOWN;
    }

    /** Edges of two lines may have another order now, and what waited is due at another time. */
    private void judgeAnew(long nowMicros, Gathering out) {
        for (StationRun run : course.stations.values()) {
            for (Turn turn : List.copyOf(run.turns())) {
                course.judge().judge(run, turn, nowMicros, out);
            }
        }
    }

    @Override
    public String toString() {
        return beganMicros + " " + isCarried + " " + told;
    }
}
