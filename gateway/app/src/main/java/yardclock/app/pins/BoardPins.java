package yardclock.app.pins;

import java.util.function.Supplier;

/**
 * The board's pins, opened when the first needs them and shared by all: closing one Pi4J context
 * would take the lines from another. Safe from any thread.
 */
public final class BoardPins implements AutoCloseable {
    private final Supplier<Pins> opening;
    private Pins pins;

    public BoardPins() {
        this(Pins::ofThisBoard);
    }

    BoardPins(Supplier<Pins> opening) {
        this.opening = opening;
    }

    /** Throws what the board has against it; the next one may try again. */
    synchronized Pins open() {
        if (pins == null) {
            pins = opening.get();
        }
        return pins;
    }

    @Override
    public synchronized void close() {
        if (pins != null) {
            pins.close();
        }
    }
}
