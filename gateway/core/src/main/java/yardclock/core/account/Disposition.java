package yardclock.core.account;

import java.util.Locale;

/** Where an edge ended. */
public enum Disposition {
    /** In a passage that makes a mark of a standing or superseded attempt. */
    MARK,
    /** Understood as something else; the cause says as what. */
    EXPLAINED,
    /** Nobody's: visible to proctor and coordinator until it is assigned or struck. */
    TRAY,
    /** A person struck it. */
    STRUCK;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
