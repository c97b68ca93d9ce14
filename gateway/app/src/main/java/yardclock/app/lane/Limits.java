package yardclock.app.lane;

/** Every maximum of the lane and the feed, each with its reason and what happens when it is met. */
public final class Limits {
    /**
     * Inputs waiting for the lane. Twelve units that were away for six minutes at one edge a second
     * bring about 4,500 at once; four times that. When full, offers are refused and the broker
     * keeps what was not acknowledged.
     */
    public static final int INBOX_INPUTS = 20_000;

    /**
     * Inputs in one commit. At 512 the cost of syncing the disk is spread thin, and applying them
     * still takes only milliseconds, so a ruling never waits long behind a backlog.
     */
    public static final int BATCH_INPUTS = 512;

    /** Questions waiting for the lane; a page asks a few a second. More are failed at once. */
    public static final int QUESTIONS = 256;

    /** Items held on the feed: a busy day of 88 candidates makes about 6,000. The oldest go. */
    public static final int FEED_ITEMS = 10_000;

    /** Items read from the feed in one go, so that a reader never holds the lane up for long. */
    public static final int FEED_PAGE = 500;

    /** Frames are drawn at most this often, real time: a tenth of a second looks immediate. */
    public static final int FRAME_GAP_MILLIS = 100;

    /** Frames are drawn at least this often, real time, so that ages and clocks move on. */
    public static final int FRAME_AGE_MILLIS = 1_000;

    /** How long the lane waits, real time, before it tries a journal again that failed. */
    public static final int JOURNAL_RETRY_MILLIS = 1_000;

    /** The lane looks at its deadline again after this much gateway time: an hour, in no hurry. */
    static final long WAIT_MICROS = 3_600_000_000L;

    /** How long a stop may take to journal what is in the inbox already. */
    public static final int STOP_MILLIS = 5_000;

    private Limits() {}
}
