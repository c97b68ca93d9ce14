package yardclock.sim.tablets;

import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.sim.people.Candidate;
import yardclock.sim.stage.Stage;

import java.util.function.Supplier;

/**
 * A proctor's second glance at the page: when it plainly has not seen that the candidate started or
 * finished a station, the proctor taps it. Lives on the stage.
 *
 * <p>Patience comes first, in both times: the rule may still be waiting for a stay, the reading may
 * still be under way, and after a gap in the link the field units need their time to catch up.
 */
final class Lookout {
    private static final long GLANCE_MICROS = 2_000_000;
    private static final long PATIENCE_MICROS = 8_000_000;
    private static final long PATIENCE_REAL_MILLIS = 600;
    private static final long AFTER_GAP_REAL_MILLIS = 4_000;

    private final Stage stage;
    private final Tablet<PostFrame> tablet;
    private Supplier<Candidate> beside = () -> null;
    private Act.Tap missing;
    private long missingSince;
    private long gapEnded;

    Lookout(Stage stage, Tablet<PostFrame> tablet) {
        this.stage = stage;
        this.tablet = tablet;
    }

    /**
     * @param candidate gives the candidate beside the proctor, or null
     */
    void begin(Supplier<Candidate> candidate) {
        beside = candidate;
        glance();
    }

    private void glance() {
        long now = stage.nowMicros();
        if (!tablet.isFresh()) {
            gapEnded = now;
        }
        Act.Tap seen = missing();
        if (seen == null || !seen.equals(missing)) {
            missing = seen;
            missingSince = now;
        } else if (isPatienceOver(now)) {
            missingSince = now;
            tablet.press(missing, -1, answer -> {});
        }
        stage.afterMicros(GLANCE_MICROS, this::glance);
    }

    private boolean isPatienceOver(long now) {
        long patience = PATIENCE_MICROS + realMillis(PATIENCE_REAL_MILLIS);
        return now - missingSince > patience && now - gapEnded > realMillis(AFTER_GAP_REAL_MILLIS);
    }

    private long realMillis(long millis) {
        return millis * 1_000 * stage.speed();
    }

    /** What the candidate has done and the page does not show, or null. */
    private Act.Tap missing() {
        Candidate candidate = beside.get();
        PostFrame.Candidate shown = tablet.isFresh() ? tablet.newest().candidate() : null;
        if (candidate == null || shown == null || shown.station() == null) {
            return null;
        }
        PostFrame.At at = shown.station();
        if (shown.number() != candidate.number()) {
            return null;
        }
        if (!at.started()) {
            boolean begun = candidate.begun() > at.index();
            return begun ? new Act.Tap(shown.number(), at.id(), "start") : null;
        }
        boolean finished = candidate.finished() > at.index();
        return finished ? new Act.Tap(shown.number(), at.id(), "finish") : null;
    }
}
