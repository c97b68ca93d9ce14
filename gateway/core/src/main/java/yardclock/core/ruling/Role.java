package yardclock.core.ruling;

/** Whose tablet it is. A public board has no role. */
public enum Role {
    COORDINATOR,
    TECHNICIAN,
    PROCTOR,
    CREW,
    SAFETY;

    /** The word used in JSON and addresses. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
