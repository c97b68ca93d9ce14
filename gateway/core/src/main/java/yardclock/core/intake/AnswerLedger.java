package yardclock.core.intake;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * One unit's answers to clock exchanges, by the ids of the questions: which came twice, and how
 * many of the newest questions were never answered.
 *
 * <p>A question's id ends in a hyphen and its number, counted from 1 within its series, which is
 * all before the hyphen. What is missing below the newest answered number was asked and not
 * answered. A question after the newest answer may still be under way and is not counted. An id of
 * another form is taken, and says nothing of loss.
 */
public final class AnswerLedger {
    /** About five minutes at one question in five seconds. */
    public static final int ASKS_LOOKED_AT = 60;

    /** A question is forgotten after seconds; a repeat comes sooner than this many answers. */
    static final int IDS_KEPT = 64;

    private static final int NUMBER_DIGITS = 15;

    private final Set<String> ids = new LinkedHashSet<>();
    private final Map<AnswerRefusal, Long> refused = new EnumMap<>(AnswerRefusal.class);
    private String series = "";
    private long newest;

    /** Of the newest questions, which were answered: the newest one is the last bit. */
    private long answered;

    private long otherBoot;

    /** Takes an answer; false when its question was answered before. */
    public boolean take(String id) {
        if (!ids.add(id)) {
            refuse(AnswerRefusal.AGAIN, 1);
            return false;
        }
        if (ids.size() > IDS_KEPT) {
            ids.remove(ids.iterator().next());
        }
        count(id);
        return true;
    }

    private void count(String id) {
        int hyphen = id.lastIndexOf('-');
        long number = hyphen < 0 ? 0 : number(id.substring(hyphen + 1));
        if (number == 0) {
            return;
        }
        if (!id.substring(0, hyphen).equals(series)) {
            series = id.substring(0, hyphen);
            answered = 0;
            newest = 0;
        }
        long ahead = number - newest;
        if (ahead > 0) {
            answered = ahead < ASKS_LOOKED_AT ? answered << ahead : 0;
            newest = number;
        }
        if (newest - number < ASKS_LOOKED_AT) {
            answered = (answered | 1L << (newest - number)) & (1L << ASKS_LOOKED_AT) - 1;
        }
    }

    private static long number(String digits) {
        if (digits.isEmpty() || digits.length() > NUMBER_DIGITS) {
            return 0;
        }
        long number = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return 0;
            }
            number = 10 * number + digit;
        }
        return number;
    }

    /** The adapter turned answers away; they are counted here so that a replay counts the same. */
    public void refuse(AnswerRefusal why, long count) {
        refused.merge(why, count, Long::sum);
    }

    /** An answer came from another boot than the one the unit reported last. */
    public void fromOtherBoot() {
        otherBoot++;
    }

    /** How many of the newest questions are looked at; 0 while nothing is known. */
    public long asked() {
        return Math.min(newest, ASKS_LOOKED_AT);
    }

    /** How many of those were not answered. */
    public long lost() {
        return asked() - Long.bitCount(answered);
    }

    public long refused(AnswerRefusal why) {
        return refused.getOrDefault(why, 0L);
    }

    public long otherBoot() {
        return otherBoot;
    }

    @Override
    public String toString() {
        return series
                + ' '
                + newest
                + ' '
                + Long.toHexString(answered)
                + ' '
                + ids
                + ' '
                + refused
                + ' '
                + otherBoot;
    }
}
