package yardclock.sim.twin;

import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.sim.referee.Witness;
import yardclock.sim.stage.Stage;
import yardclock.sim.tablets.Gateway;
import yardclock.sim.tablets.Tablet;

import java.util.function.Consumer;

/** A proctor's tablet with a witness who looks over the shoulder. */
record Witnessed(Stage stage, Tablet<PostFrame> tablet, Witness witness)
        implements Tablet<PostFrame> {
    @Override
    public void open(Consumer<PostFrame> listener) {
        tablet.open(
                frame -> {
                    witness.sees(frame);
                    listener.accept(frame);
                });
    }

    @Override
    public void close() {
        tablet.close();
    }

    @Override
    public Access access() {
        return tablet.access();
    }

    @Override
    public PostFrame newest() {
        return tablet.newest();
    }

    @Override
    public boolean isFresh() {
        return tablet.isFresh();
    }

    @Override
    public void press(Act act, long basis, Consumer<Gateway.Answer> then) {
        if (act instanceof Act.Tap tap) {
            witness.hears(tap, stage.nowMicros());
        }
        tablet.press(act, basis, then);
    }
}
