package yardclock.app.stations;

import yardclock.core.engine.Input;
import yardclock.core.intake.AnswerRefusal;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;

/**
 * Decides whom to ask for the time, and matches answers to questions.
 *
 * <p>A unit that was heard lately is asked every 5 s of exam time, dithered so that units do not
 * fall into step with each other or with the radio; when it comes, comes back or booted anew, a
 * burst gives a first estimate quickly. An id is used once; it ends in the number of the question
 * in its unit's own series, by which the engine sees what was never answered. Answers that took
 * longer than 2 s of real time say nothing of the clock and are refused, and so are second answers;
 * both are journalled as counts. Safe from any thread; real times are nanoseconds of the gateway's
 * real monotonic clock and handed in.
 */
final class Exchanges {
    static final int BURST = 4;
    static final long PERIOD_NANOS = TimeUnit.SECONDS.toNanos(5);
    static final double DITHER = 0.4;
    static final long LATE_NANOS = TimeUnit.SECONDS.toNanos(2);

    /** Long enough to let the first answer out of the way, short beside a boot. */
    private static final long BURST_GAP_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    /** A unit off-line this long is not asked: a broker would only store the questions. */
    private static final long HEARD_NANOS = TimeUnit.SECONDS.toNanos(15);

    private final Map<String, Schedule> schedules = new LinkedHashMap<>();
    private final Map<String, Question> open = new LinkedHashMap<>();
    private final Map<String, String> boots = new HashMap<>();
    private final int speed;
    private final RandomGenerator dither;
    private final Supplier<String> ids;
    private final Map<String, Series> series = new HashMap<>();
    private final RefusedAnswers refused = new RefusedAnswers();

    private static final class Question {
        private final String unit;
        private final long gatewaySentMicros;
        private final long askedNanos;
        private boolean answered;

        Question(String unit, long gatewaySentMicros, long askedNanos) {
            this.unit = unit;
            this.gatewaySentMicros = gatewaySentMicros;
            this.askedNanos = askedNanos;
        }
    }

    /** The ids of one unit's questions: a name used by nobody else, and a number from 1. */
    private static final class Series {
        private final String name;
        private long asked;

        Series(String name) {
            this.name = name;
        }

        String next() {
            asked++;
            return name + "-" + asked;
        }
    }

    private static final class Schedule {
        private long nextNanos;
        private long heardNanos;
        private int burstLeft;
    }

    /**
     * @param ids names for series of questions, each different from all others
     */
    Exchanges(int speed, RandomGenerator dither, Supplier<String> ids) {
        this.speed = speed;
        this.dither = dither;
        this.ids = ids;
    }

    /** The link is new: whoever is heard next gets a burst. */
    synchronized void linkUp() {
        schedules.clear();
        open.clear();
    }

    synchronized void heard(String unit, String boot, long nowNanos) {
        boolean sameBoot = boot.equals(boots.put(unit, boot));
        Schedule schedule = schedules.get(unit);
        if (schedule == null || !sameBoot) {
            schedule = new Schedule();
            schedule.nextNanos = nowNanos;
            schedule.burstLeft = BURST;
            schedules.put(unit, schedule);
        }
        schedule.heardNanos = nowNanos;
    }

    synchronized void down(String unit) {
        schedules.remove(unit);
    }

    /** The unit to ask now, if any; its next turn is settled at once. */
    synchronized Optional<String> due(long nowNanos) {
        schedules.values().removeIf(s -> nowNanos - s.heardNanos > HEARD_NANOS);
        for (Map.Entry<String, Schedule> each : schedules.entrySet()) {
            Schedule schedule = each.getValue();
            if (schedule.nextNanos - nowNanos <= 0) {
                schedule.burstLeft = Math.max(0, schedule.burstLeft - 1);
                schedule.nextNanos = nowNanos + gapNanos(schedule);
                return Optional.of(each.getKey());
            }
        }
        return Optional.empty();
    }

    /** How long until someone is due, at most {@code mostNanos}. */
    synchronized long nanosToNext(long nowNanos, long mostNanos) {
        long least = mostNanos;
        for (Schedule schedule : schedules.values()) {
            least = Math.min(least, schedule.nextNanos - nowNanos);
        }
        return Math.max(0, least);
    }

    /** Opens a question; to be called right before it is sent. */
    synchronized String ask(String unit, long gatewaySentMicros, long nowNanos) {
        forgetOlderThan(nowNanos - 10 * LATE_NANOS);
        String id = series.computeIfAbsent(unit, u -> new Series(ids.get())).next();
        open.put(id, new Question(unit, gatewaySentMicros, nowNanos));
        return id;
    }

    /** An exchange input, or why the answer is not one. */
    synchronized Decoded answered(Decoded.Answer answer, long gatewayMicros, long nowNanos) {
        Question question = open.get(answer.id());
        if (question == null || !question.unit.equals(answer.unit())) {
            String words =
                    "no question with the id " + answer.id() + " is open at " + answer.unit();
            return refused(answer, AnswerRefusal.UNKNOWN, words, nowNanos);
        }
        if (question.answered) {
            String words = "the question " + answer.id() + " was answered before";
            return refused(answer, AnswerRefusal.AGAIN, words, nowNanos);
        }
        question.answered = true;
        long tookNanos = nowNanos - question.askedNanos;
        if (tookNanos > LATE_NANOS) {
            String words = "the answer took " + TimeUnit.NANOSECONDS.toMillis(tookNanos) + " ms";
            return refused(answer, AnswerRefusal.LATE, words, nowNanos);
        }
        return Decoded.of(
                new Input.ExchangeAnswered(
                        answer.unit(),
                        answer.boot(),
                        answer.id(),
                        question.gatewaySentMicros,
                        answer.receivedTick(),
                        answer.sentTick(),
                        gatewayMicros));
    }

    private Decoded refused(Decoded.Answer answer, AnswerRefusal why, String words, long nowNanos) {
        Rejection rejection = new Rejection(RejectionReason.of(why), words);
        return Decoded.refused(rejection, refused.add(answer, why, nowNanos));
    }

    private long gapNanos(Schedule schedule) {
        if (schedule.burstLeft > 0) {
            return Math.min(BURST_GAP_NANOS, PERIOD_NANOS / speed);
        }
        double factor = 1 + DITHER * (2 * dither.nextDouble() - 1);
        return (long) (PERIOD_NANOS * factor / speed);
    }

    private void forgetOlderThan(long nanos) {
        Iterator<Question> oldest = open.values().iterator();
        while (oldest.hasNext() && oldest.next().askedNanos - nanos < 0) {
            oldest.remove();
        }
    }
}
