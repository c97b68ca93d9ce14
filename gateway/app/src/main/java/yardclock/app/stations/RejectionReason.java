package yardclock.app.stations;

import yardclock.core.intake.AnswerRefusal;

import java.util.Locale;

/** Why a unit's message is not taken. The order is the order in which a message is examined. */
public enum RejectionReason {
    RETAINED,
    UNKNOWN_TOPIC,
    BAD_UNIT_ID,
    UNKNOWN_UNIT,
    TOO_LARGE,
    NOT_UTF8,
    DUPLICATE_KEY,
    NOT_JSON,
    WRONG_SHAPE,
    TOO_MANY,
    MISSING_VERSION,
    UNKNOWN_VERSION,
    MISSING_FIELD,
    NOT_AN_INTEGER,
    OUT_OF_RANGE,
    BAD_TEXT,
    EXCHANGE_UNKNOWN,
    EXCHANGE_AGAIN,
    EXCHANGE_LATE,
    INBOX_FULL;

    static RejectionReason of(AnswerRefusal why) {
        return switch (why) {
            case AGAIN -> EXCHANGE_AGAIN;
            case LATE -> EXCHANGE_LATE;
            case UNKNOWN -> EXCHANGE_UNKNOWN;
        };
    }

    /** The word in metrics, vectors and on the bench. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
