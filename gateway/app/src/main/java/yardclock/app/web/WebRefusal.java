package yardclock.app.web;

import java.util.Locale;

/** Why a request is turned away before the rules are even asked. */
enum WebRefusal {
    MALFORMED(400, "This request cannot be read."),
    NAME_MISSING(400, "Who are you? Enter your name."),
    NAME_TOO_LONG(400, "At most 60 characters for the name."),
    UNKNOWN_DEVICE(401, "This device is not enrolled. Ask the coordinator for a code."),
    NOT_YOUR_ROLE(403, "This role may not do that."),
    NOT_PUBLIC(401, "This is not public. Ask the coordinator for a code."),
    WRONG_ORIGIN(403, "This request came from another site's page."),
    EXCHANGE_NOT_YOURS(403, "This clock question was put to another device."),
    NOT_FOUND(404, "There is nothing at this address."),
    METHOD_NOT_HERE(405, "This address cannot be used in this way."),
    EXCHANGE_UNKNOWN(409, "No clock question with this id is open."),
    EXCHANGE_USED(409, "This clock question was answered already."),
    EXCHANGE_LATE(409, "This answer to a clock question took too long to say anything."),
    TOO_LARGE(413, "At most 16 KiB."),
    NOT_JSON(415, "Send JSON, as application/json."),
    WRONG_HOST(421, "The gateway does not go by this name. Use its number address."),
    TOO_MANY_TRIES(429, "Too many wrong tries. Wait a minute."),
    TROUBLE_INSIDE(500, "Something went wrong in the gateway. Nothing was decided by it."),
    BUSY(503, "The gateway is busy. Try again."),
    NO_ANSWER(503, "The gateway has not answered in time. Send the same again, with the same key."),
    TOO_MANY_STREAMS(503, "Too many screens are connected. Close one and try again."),
    JOURNAL_TROUBLE(503, "The journal cannot be written."),
    ONLY_COLLECTED(503, "The rules have failed: this is kept, but nothing follows. Go on by hand.");

    private final int status;
    private final String words;

    WebRefusal(int status, String words) {
        this.status = status;
        this.words = words;
    }

    int status() {
        return status;
    }

    String words() {
        return words;
    }

    String reason() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The refusal that a status of the web library stands for. */
    static WebRefusal ofStatus(int status) {
        for (WebRefusal refusal : values()) {
            if (refusal.status == status) {
                return refusal;
            }
        }
        return status < 500 ? MALFORMED : TROUBLE_INSIDE;
    }
}
