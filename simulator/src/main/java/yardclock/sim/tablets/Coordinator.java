package yardclock.sim.tablets;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.StationView;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The coordinator: releases the next candidate whenever the page says it can be done, with a free
 * proctor of ours beside them, and goes on by hand where a sensor holds a station. Lives on the
 * stage.
 */
public final class Coordinator {
    private final Tablet<ControlFrame> tablet;
    private final Set<String> proctorDevices;
    private final Consumer<ControlFrame> onFrame;
    private long pressedAtFrame = -1;
    private boolean pressing;

    /**
     * @param proctorDevices the devices of simulated proctors; a person's tablet is left alone
     * @param onFrame who else looks at each frame
     */
    public Coordinator(
            Tablet<ControlFrame> tablet,
            Set<String> proctorDevices,
            Consumer<ControlFrame> onFrame) {
        this.tablet = tablet;
        this.proctorDevices = proctorDevices;
        this.onFrame = onFrame;
    }

    public void begin() {
        tablet.open(this::looksAt);
    }

    private void looksAt(ControlFrame frame) {
        onFrame.accept(frame);
        boolean newer = frame.head().frame() > pressedAtFrame;
        if (pressing || !newer) {
            return;
        }
        Optional<String> held = heldStation(frame);
        if (held.isPresent()) {
            press(frame, new Act.GoOnByHand(held.get(), Reason.SENSOR_FAILED, "by the taps"));
        } else if (frame.next().number() > 0 && frame.next().ready()) {
            freeProctor(frame)
                    .ifPresent(
                            device -> press(frame, new Act.Release(frame.next().number(), device)));
        }
    }

    /** A station that a sensor in trouble holds. */
    private static Optional<String> heldStation(ControlFrame frame) {
        return frame.stations().stream().filter(StationView::held).map(StationView::id).findFirst();
    }

    private Optional<String> freeProctor(ControlFrame frame) {
        return frame.proctors().stream()
                .filter(proctor -> proctor.number() == 0)
                .map(ControlFrame.ProctorView::device)
                .filter(proctorDevices::contains)
                .findFirst();
    }

    private void press(ControlFrame frame, Act act) {
        pressing = true;
        pressedAtFrame = frame.head().frame();
        tablet.press(
                act,
                -1,
                answer -> {
                    pressing = false;
                    pressedAtFrame = Math.max(pressedAtFrame, answer.body().path("entry").asLong());
                });
    }
}
