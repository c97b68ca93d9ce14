package yardclock.core.health;

import java.util.Optional;

/**
 * What a comparison of a unit's clock rests on: its boot, the access point its radio is at (empty
 * while unknown), and the contract it speaks.
 */
public record Circumstances(String boot, String accessPoint, int contract) {
    /** What became of them. */
    public enum Change {
        BOOT("The unit restarted."),
        ACCESS_POINT("The unit is at another access point."),
        CONTRACT("The unit speaks another version of the contract."),
        TIME_LINE("The gateway's clock was interrupted."),
        REPLACED("It was calibrated again.");

        private final String words;

        Change(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What is no longer as it was, the weightiest first; an unknown access point is no change. */
    public Optional<Change> changeTo(Circumstances now) {
        if (!boot.equals(now.boot)) {
            return Optional.of(Change.BOOT);
        }
        boolean bothKnown = !accessPoint.isEmpty() && !now.accessPoint.isEmpty();
        if (bothKnown && !accessPoint.equals(now.accessPoint)) {
            return Optional.of(Change.ACCESS_POINT);
        }
        return contract == now.contract ? Optional.empty() : Optional.of(Change.CONTRACT);
    }
}
