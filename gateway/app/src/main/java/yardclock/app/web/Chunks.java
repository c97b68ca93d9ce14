package yardclock.app.web;

/** What a stream sends next. Asked on the pump thread only, and only when the tablet takes more. */
@FunctionalInterface
interface Chunks {
    /** The next bytes to send, never changed afterwards; null when there is nothing now. */
    byte[] next();
}
