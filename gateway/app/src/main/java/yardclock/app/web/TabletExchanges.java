package yardclock.app.web;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Answer;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;

/**
 * The questions put to tablets' clocks, and which answer belongs to which.
 *
 * <p>An id is used once, by the device it was sent to, and within 3 s: a later answer says nothing
 * worth keeping. Ids that are over are remembered for a while, so that a refusal can say what was
 * wrong. Safe from any thread. Waits are real time at every speed, as tablets and Wi-Fi are.
 */
final class TabletExchanges {
    static final long LATE_NANOS = TimeUnit.SECONDS.toNanos(3);

    /** When a stream opens, and when its page has a new clock. */
    static final int BURST = 6;

    static final long PERIOD_NANOS = TimeUnit.SECONDS.toNanos(5);
    static final double DITHER = 0.4;

    private static final long BURST_GAP_NANOS = TimeUnit.MILLISECONDS.toNanos(300);
    private static final double BURST_DITHER = 2;
    private static final long REMEMBERED_NANOS = 10 * LATE_NANOS;

    /** Every stream in a burst for as long as ids are remembered, twice over. The oldest go. */
    private static final int QUESTIONS_MAX = 4_096;

    private final GatewayClock clock;
    private final RandomGenerator dither;
    private final Supplier<String> ids;
    private final Map<String, Question> questions = new LinkedHashMap<>();

    TabletExchanges(GatewayClock clock, RandomGenerator dither, Supplier<String> ids) {
        this.clock = clock;
        this.dither = dither;
        this.ids = ids;
    }

    /** What was asked when, and whether it was answered. */
    record Question(String device, long gatewaySentMicros, long askedNanos, boolean answered) {}

    /** What a tablet is asked. */
    record ClockMessage(String id, long gatewayMicros, int speed) {}

    /** Opens a question; to be called right before it is written. */
    synchronized ClockMessage ask(String device) {
        long now = clock.realNanos();
        forget(now);
        String id = ids.get();
        long sent = clock.now().micros();
        questions.put(id, new Question(device, sent, now, false));
        return new ClockMessage(id, sent, clock.speed());
    }

    /** The question this answers, which is then answered; or why it is none. */
    synchronized Answer<Question> take(String device, String id) {
        Question question = questions.get(id);
        if (question == null) {
            return refused(WebRefusal.EXCHANGE_UNKNOWN);
        }
        if (!question.device().equals(device)) {
            return refused(WebRefusal.EXCHANGE_NOT_YOURS);
        }
        if (question.answered()) {
            return refused(WebRefusal.EXCHANGE_USED);
        }
        questions.put(
                id,
                new Question(device, question.gatewaySentMicros(), question.askedNanos(), true));
        boolean isLate = clock.realNanos() - question.askedNanos() > LATE_NANOS;
        return isLate ? refused(WebRefusal.EXCHANGE_LATE) : Answer.of(question);
    }

    private static Answer<Question> refused(WebRefusal refusal) {
        return Answer.refused(refusal.reason(), refusal.words());
    }

    private void forget(long nowNanos) {
        Iterator<Question> oldest = questions.values().iterator();
        while (oldest.hasNext()) {
            boolean isOld = nowNanos - oldest.next().askedNanos() > REMEMBERED_NANOS;
            if (!isOld && questions.size() < QUESTIONS_MAX) {
                return;
            }
            oldest.remove();
        }
    }

    /** Real time until a stream's next question. */
    synchronized long gapNanos(boolean inBurst) {
        double by = dither.nextDouble();
        return inBurst
                ? (long) (BURST_GAP_NANOS * (1 + BURST_DITHER * by))
                : (long) (PERIOD_NANOS * (1 + DITHER * (2 * by - 1)));
    }

    long realNanos() {
        return clock.realNanos();
    }
}
