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

    Paperwork(Stage stage, Tablet<PostFrame> tablet, Ground ground) {
        this.stage = stage;
        this.tablet = tablet;
        this.ground = ground;
    }

    void look(PostFrame.Candidate shown) {
        if (shown.number() != number) {
            number = shown.number();
            since = stage.nowMicros();
        }
        if (busy) {
            return;
        }
        Act next = next(shown);
        if (next == null) {
            return;
        }
        busy = true;
        long basis = next instanceof Act.Tell ? -1 : shown.revision();
        tablet.press(next, basis, answer -> stage.afterMicros(PACE_MICROS, this::goOn));
    }

    private void goOn() {
        busy = false;
        PostFrame frame = tablet.newest();
        if (frame.candidate() != null && frame.candidate().number() == number) {
            look(frame.candidate());
        }
    }

    private Act next(PostFrame.Candidate shown) {
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
            stage.afterMicros(PACE_MICROS, this::goOn);
            return null;
        }
        boolean toTell = !shown.result().isEmpty() && !shown.told();
        return toTell ? new Act.Tell(number) : null;
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
