package yardclock.app.web;

import java.util.concurrent.atomic.AtomicReference;

/** One slot that holds only the newest frame. Any thread may put, the pump takes. */
final class Mailbox implements Chunks {
    private final AtomicReference<byte[]> slot = new AtomicReference<>();

    void put(byte[] frame) {
        slot.set(frame);
    }

    @Override
    public byte[] next() {
        return slot.getAndSet(null);
    }
}
