package yardclock.app.pins;

import java.util.Locale;

/** What became of one look at a climate sensor; a closed list, to be counted. */
public enum ClimateOutcome {
    /** The journal has the reading. */
    KEPT,
    /** It was measured, and the gateway could not take it in. */
    NOT_KEPT,
    NO_ANSWER,
    SHORT_ANSWER,
    WRONG_CHECKSUM,
    /** The sensor's own heater was on, or had been a moment ago: it reads itself. */
    HEATER_ON,
    /** The bus can't be opened. */
    NO_BUS;

    /** The word in the metrics. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
