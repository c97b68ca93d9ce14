package yardclock.core.fact;

/** What the engine can conclude. The timing feed carries those that are {@link #onFeed()}. */
public enum FactKind {
    RELEASED(true),
    MARK_PROPOSED(true),
    MARK_CHANGED(true),
    MARK_SETTLED(true),
    SPLIT_PROPOSED(true),
    SPLIT_CONFIRMED(true),
    SPLIT_VOID(true),
    SPLIT_BY_HAND(true),
    RULING_WITHDRAWN(false),
    OFFICIAL_TIME(true),
    OUTCOME(true),
    TOLD(true),
    RUN_AGAIN(true),
    HOLD_IN(true),
    HOLD_OUT(true),
    COURSE_HELD(true),
    COURSE_RESUMED(true),
    STOPPED(true),
    RESTARTED(true),
    STATION_IN_USE(true),
    STATION_TO_BE_RESET(true),
    STATION_READY(true),
    EDGE_TAKEN(false),
    EDGE_DUPLICATE(false),
    EDGE_CONFLICT(false),
    EDGE_REFUSED(false),
    GAP_OPENED(false),
    GAP_CLOSED(false),
    UNIT_BOOTED(false),
    UNIT_SILENT(false),
    UNIT_BACK(false),
    EXCHANGE_TAKEN(false),
    EXCHANGE_REFUSED(false),
    PASSAGE_UNASSIGNED(false),
    LATE_EVIDENCE(false),
    WIDE_BOUND(false),
    CALIBRATION_BEGUN(false),
    CALIBRATED(false),
    CALIBRATION_BROKEN_OFF(false),
    CALIBRATION_ENDED(false),
    TRIGGER_ADJUSTED(false),
    STOP_BUTTON(false),
    PROOF_RUN_BEGUN(false),
    PROOF_RUN_SIGNED(false),
    PROOF_RUN_ENDED(false),
    ALARM(false),

    /** An alarm that was told does not hold any more; its words are those it was told with. */
    ALARM_OVER(false);

    private final boolean onFeed;

    FactKind(boolean onFeed) {
        this.onFeed = onFeed;
    }

    public boolean onFeed() {
        return onFeed;
    }
}
