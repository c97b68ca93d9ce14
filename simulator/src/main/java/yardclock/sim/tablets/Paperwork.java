package yardclock.sim.tablets;

import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.sim.stage.Stage;

/**
 * What a proctor does when the course is done: confirms each clean split, gives the others by the
 * stop-watch, tells the result. One thing at a time, each by what the page shows then. Lives on the
 * stage.
 */
final class Paperwork {
    private static final long PACE_MICROS = 1_500_000;

    /** A split that is not clean may still be settling; it is looked at again for this long. */
    private static final long PATIENCE_MICROS = 20_000_000;

    private final Stage stage;
    private final Tablet<PostFrame> tablet;
    private final Ground ground;
    private int number;
    private long since;
    private boolean busy;

    /** The entry of the newest answer: a frame before it does not show what was ruled. */
    private long ruledAtEntry;

    Paperwork(Stage stage, Tablet<PostFrame> tablet, Ground ground) {
        this.stage = stage;
        this.tablet = tablet;
        this.ground = ground;
    }

    /** Looks at the newest frame and does what is next, if it is time. */
    void look() {
        PostFrame frame = tablet.newest();
        PostFrame.Candidate shown = frame.candidate();
        if (busy || shown == null || frame.head().frame() < ruledAtEntry) {
            return;
        }
        if (shown.number() != number) {
            number = shown.number();
            since = stage.nowMicros();
        }
        Act next = next(shown);
        if (next != null) {
            busy = true;
            tablet.press(next, shown.revision(), this::answered);
        }
    }

    private void answered(Gateway.Answer answer) {
        ruledAtEntry = answer.body().path("entry").asLong(ruledAtEntry);
        stage.afterMicros(PACE_MICROS, this::goOn);
    }

    private void goOn() {
        busy = false;
        look();
    }

    /** Once there is a result, as after a withdrawal, nothing is left to rule on. */
    private Act next(PostFrame.Candidate shown) {
        if (!shown.result().isEmpty()) {
            return shown.told() ? null : new Act.Tell(number);
        }
        boolean patient = stage.nowMicros() - since < PATIENCE_MICROS;
        boolean unsettled = false;
        for (PostFrame.Split split : shown.splits()) {
            boolean open = isOpen(split);
            if (open && split.clean()) {
                return new Act.Confirm(number, split.station());
            }
            unsettled |= open;
            if (open && !patient) {
                return byHand(split);
            }
        }
        if (unsettled) {
            busy = true;
            stage.afterMicros(PACE_MICROS, this::goOn);
        }
        return null;
    }

    private static boolean isOpen(PostFrame.Split split) {
        return switch (split.state()) {
            case "confirmed", "void", "by-hand" -> false;
            default -> true;
        };
    }

    private Act byHand(PostFrame.Split split) {
        long read = ground.stopWatchMicros(number, split.station());
        Reason reason = split.state().equals("incomplete") ? Reason.SENSOR_FAILED : Reason.OTHER;
        return read < 0
                ? new Act.VoidSplit(number, split.station(), Reason.REQUIRED_ACT_NOT_DONE, "")
                : new Act.HandTime(number, split.station(), read, reason, "stop-watch");
    }
}
