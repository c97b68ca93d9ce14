package yardclock.app.web;

/** Every maximum of the HTTP side, each with its reason and what happens when it is met. */
final class WebLimits {
    /** The splits that were on a screen: all readings of one, or one of each station. */
    static final int SHOWN_MAX = 32;

    /** The longest act, with 500 characters of words in any script, takes about 3 KiB. Else 413. */
    static final int BODY_BYTES = 16 * 1024;

    /** Five proctors, crew, staff, boards and listeners, several times over. Else 503. */
    static final int STREAMS = 64;

    /** Threads for requests: every tablet may wait for a commit at once, and pages still load. */
    static final int THREADS = 64;

    static final int THREADS_MIN = 8;

    /** Waiting for an answer from the lane. A commit takes milliseconds. Then 503. */
    static final int ANSWER_SECONDS = 10;

    /** Looking up who asks; a queue this long means that nothing else works either. Then 503. */
    static final int HOLDER_SECONDS = 3;

    /** A page shows lost contact within 3 s, so each stream shows life each second. */
    static final int ALIVE_MILLIS = 1_000;

    /**
     * A tablet that takes in nothing for so long loses its stream and its place; one that sends
     * nothing more of its request loses its connection.
     */
    static final int IDLE_MILLIS = 20_000;

    /** How long a stop waits for requests that are being answered. */
    static final int STOP_MILLIS = 5_000;

    /** How long a stop waits for connections on which nothing is being answered. */
    static final int STOP_IDLE_MILLIS = 200;

    /** Request line and headers. Else 431. */
    static final int HEADER_BYTES = 8 * 1024;

    /** Ids of candidates' stations, devices, criteria, keys. */
    static final int ID_CHARS = 64;

    static final int WORDS_CHARS = 500;

    static final int NUMBER_MAX = 99_999;

    /** JSON numbers beyond 2^53 are not exact in a browser. */
    static final long EXACT_MAX = 9_007_199_254_740_992L;

    private WebLimits() {}
}
