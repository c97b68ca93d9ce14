package yardclock.app.web;

/**
 * A stream's frames and, between them, questions to its tablet's clock. A question carries the
 * gateway's time of the moment it is handed to the server for writing, after every frame that
 * waited.
 *
 * <p>{@link #next} runs on the pump thread; the rest may be called from any.
 */
final class ClockedChunks implements Chunks {
    private final Chunks frames;
    private final TabletExchanges exchanges;
    private final String device;
    private long dueNanos;
    private int burstLeft = TabletExchanges.BURST;

    ClockedChunks(Chunks frames, TabletExchanges exchanges, String device) {
        this.frames = frames;
        this.exchanges = exchanges;
        this.device = device;
        // A page that opens draws its first frame first.
        this.dueNanos = exchanges.realNanos() + exchanges.gapNanos(true);
    }

    @Override
    public synchronized byte[] next() {
        byte[] frame = frames.next();
        if (frame != null || !isDue()) {
            return frame;
        }
        boolean inBurst = burstLeft > 1;
        burstLeft = Math.max(0, burstLeft - 1);
        dueNanos = exchanges.realNanos() + exchanges.gapNanos(inBurst);
        return SseText.message("clock", exchanges.ask(device));
    }

    /** Whether it is time to ask. */
    synchronized boolean isDue() {
        return dueNanos - exchanges.realNanos() <= 0;
    }

    boolean isOf(String aDevice) {
        return device.equals(aDevice);
    }

    /** Asks quickly from now on, as after the opening. */
    synchronized void burst() {
        burstLeft = TabletExchanges.BURST;
        dueNanos = Math.min(dueNanos, exchanges.realNanos() + exchanges.gapNanos(true));
    }
}
