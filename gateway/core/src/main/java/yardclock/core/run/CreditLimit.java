package yardclock.core.run;

import yardclock.core.course.DayRules;

/** Whether the holds of a run stay within what the plan credits, one by one and all together. */
public enum CreditLimit {
    WITHIN,

    /** The limit lies within what is not known of the presses. */
    UNDECIDED,
    BEYOND;

    static CreditLimit ofOne(Credit hold, DayRules day) {
        return of(hold, day.maxHoldCreditOneMicros());
    }

    static CreditLimit ofAll(Credit holds, DayRules day) {
        return of(holds, day.maxHoldCreditAllMicros());
    }

    /** The limit itself is still within. */
    private static CreditLimit of(Credit credit, long mostMicros) {
        if (credit.micros() - credit.lessMicros() > mostMicros) {
            return BEYOND;
        }
        return credit.micros() + credit.moreMicros() > mostMicros ? UNDECIDED : WITHIN;
    }

    CreditLimit orWorse(CreditLimit other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
