package yardclock.app.stations;

import yardclock.core.engine.Input;
import yardclock.core.intake.AnswerRefusal;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Counts answers that are no exchange, and says when the journal is to hear of them: at once, but
 * for each unit and reason at most once a second, so that a unit gone wild can't fill the disk with
 * its own refusals. Used under the lock of {@link Exchanges}.
 */
final class RefusedAnswers {
    static final long EVERY_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final Map<String, Map<AnswerRefusal, Tally>> tallies = new HashMap<>();

    private static final class Tally {
        private long untold;
        private long toldNanos;
    }

    /** The input that tells of this one and those before it, or empty while it is too early. */
    Optional<Input> add(Decoded.Answer answer, AnswerRefusal why, long nowNanos) {
        Tally tally =
                tallies.computeIfAbsent(answer.unit(), u -> new EnumMap<>(AnswerRefusal.class))
                        .computeIfAbsent(why, w -> firstTally(nowNanos));
        tally.untold++;
        if (nowNanos - tally.toldNanos < EVERY_NANOS) {
            return Optional.empty();
        }
        long count = tally.untold;
        tally.untold = 0;
        tally.toldNanos = nowNanos;
        return Optional.of(
                new Input.AnswerRefused(answer.unit(), answer.boot(), answer.id(), why, count));
    }

    private static Tally firstTally(long nowNanos) {
        Tally tally = new Tally();
        tally.toldNanos = nowNanos - EVERY_NANOS;
        return tally;
    }
}
