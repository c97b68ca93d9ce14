package yardclock.sim.tablets;

import yardclock.core.board.CheckView;
import yardclock.core.board.WatchFrame;
import yardclock.core.ruling.Act;

import java.util.Optional;

/**
 * The safety officer in the morning: looks after each item of the start-of-day checklist and signs
 * it, one after the other. What a person took back is that person's to sign again. Lives on the
 * stage.
 */
public final class SafetyOfficer {
    private final Tablet<WatchFrame> tablet;
    private long pressedAtFrame = -1;
    private boolean pressing;

    public SafetyOfficer(Tablet<WatchFrame> tablet) {
        this.tablet = tablet;
    }

    public void begin() {
        tablet.open(this::looksAt);
    }

    private void looksAt(WatchFrame frame) {
        if (!pressing && frame.head().frame() > pressedAtFrame) {
            unsigned(frame).ifPresent(item -> sign(frame, item));
        }
    }

    private static Optional<CheckView> unsigned(WatchFrame frame) {
        return frame.startOfDay().stream()
                .filter(item -> !item.done() && item.person().isEmpty())
                .findFirst();
    }

    private void sign(WatchFrame frame, CheckView item) {
        pressing = true;
        pressedAtFrame = frame.head().frame();
        tablet.press(
                new Act.ChecklistDone(item.id(), ""),
                -1,
                answer -> {
                    pressing = false;
                    pressedAtFrame = Math.max(pressedAtFrame, answer.body().path("entry").asLong());
                });
    }
}
