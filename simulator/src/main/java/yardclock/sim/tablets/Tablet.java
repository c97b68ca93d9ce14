package yardclock.sim.tablets;

import yardclock.core.ruling.Act;

import java.util.function.Consumer;

/**
 * What somebody holds in their hands: shows the newest frame of one kind, and sends what is
 * pressed, in order, each with its page's clock at the press. Used on the stage.
 *
 * @param <F> the kind of frame it shows
 */
public interface Tablet<F> {
    /** What enrolling gave. */
    record Access(String token, String device, String role) {}

    /**
     * @param listener told of each new frame
     */
    void open(Consumer<F> listener);

    void close();

    Access access();

    /** The newest frame, or null before the first. */
    F newest();

    /** Whether the page would still show its data as live. */
    boolean isFresh();

    /** Presses something. The answer comes on the stage, however long the link takes. */
    void press(Act act, long basis, Consumer<Gateway.Answer> then);
}
