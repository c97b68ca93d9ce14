package yardclock.core.health;

import yardclock.core.intake.AnswerLedger;
import yardclock.core.intake.AnswerRefusal;
import yardclock.core.time.ClockStatus;

import java.util.ArrayList;
import java.util.List;

/**
 * What a technician must know of a unit's clock, each a plain sentence on the bench. The order is
 * that of showing: what touches the marks of now comes first.
 */
public enum ClockTrouble {
    /** No exchange with this boot yet: its edges have no place in time. */
    NO_BOUND_YET,

    /** Edges came before the first exchange and wait for it. */
    EDGES_WAIT,

    /** A stamp made now is wider than the plan allows. */
    BOUND_TOO_WIDE,

    /** No exchange lies within ± {@link #CRYSTAL_PARTS_PER_BILLION}: no sound crystal does that. */
    RATE_TOO_FAR,

    /** The counter jumped without a reboot. */
    JUMPED,

    /** The unit shows signs of life, and yet does not answer. */
    NOT_ANSWERING,

    /** Many questions stay without an answer. */
    MANY_LOST,

    /** Answers whose ticks ran backwards within the boot. */
    BACKWARDS,

    /** Answers no clock could give: received before they were sent. */
    IMPOSSIBLE,

    /** One question answered more than once. */
    ANSWERED_TWICE,

    /** Answers to questions nobody asked. */
    UNASKED,

    /** Answers that took too long. */
    LATE,

    /** Answers from another boot than the unit reports. */
    OTHER_BOOT;

    /** Data sheets of such boards promise ± 10 to 40 parts per million; twice and more is wrong. */
    static final long CRYSTAL_PARTS_PER_BILLION = 100_000;

    /** Six questions at the usual pace, all without an answer. */
    static final long NOT_ANSWERING_REAL_MICROS = 30_000_000;

    /** Fewer questions than this say nothing of a loss. */
    private static final int ASKED_LEAST = 20;

    /** More than this part lost is more than a busy radio. */
    private static final int LOST_PERCENT = 30;

    /**
     * Which of them hold now.
     *
     * @param patienceMicros how long a unit that is up may stay without an exchange
     */
    public static List<ClockTrouble> of(Unit unit, ClockStatus clock, long patienceMicros) {
        List<ClockTrouble> found = new ArrayList<>();
        AnswerLedger answers = unit.answers();
        boolean isUp = unit.status().status() == UnitStatus.Status.UP;
        boolean isSeen = unit.status().status() != UnitStatus.Status.NEVER_SEEN;
        add(found, NO_BOUND_YET, isSeen && !clock.hasBound());
        add(found, EDGES_WAIT, unit.waitingEdges() > 0);
        add(found, BOUND_TOO_WIDE, unit.boundAlarm().isRaised());
        add(found, RATE_TOO_FAR, isTooFar(clock));
        add(found, JUMPED, clock.faults() > 0);
        add(found, NOT_ANSWERING, isUp && clock.lastExchangeAgeMicros() > patienceMicros);
        add(found, MANY_LOST, isMany(answers));
        add(found, BACKWARDS, clock.backwards() > 0);
        add(found, IMPOSSIBLE, clock.impossible() > 0);
        add(found, ANSWERED_TWICE, answers.refused(AnswerRefusal.AGAIN) > 0);
        add(found, UNASKED, answers.refused(AnswerRefusal.UNKNOWN) > 0);
        add(found, LATE, answers.refused(AnswerRefusal.LATE) > 0);
        add(found, OTHER_BOOT, answers.otherBoot() > 0);
        return List.copyOf(found);
    }

    private static void add(List<ClockTrouble> found, ClockTrouble one, boolean holds) {
        if (holds) {
            found.add(one);
        }
    }

    private static boolean isTooFar(ClockStatus clock) {
        return clock.rateLowPartsPerBillion() > CRYSTAL_PARTS_PER_BILLION
                || clock.rateHighPartsPerBillion() < -CRYSTAL_PARTS_PER_BILLION;
    }

    private static boolean isMany(AnswerLedger answers) {
        return answers.asked() >= ASKED_LEAST
                && answers.lost() * 100 > answers.asked() * LOST_PERCENT;
    }

    /** How long a unit that is up may stay without an exchange, in exam time. */
    public static long patienceMicros(int speed) {
        return NOT_ANSWERING_REAL_MICROS * speed;
    }
}
