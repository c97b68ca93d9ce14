package yardclock.core.run;

import yardclock.core.time.Carry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * All rulings of one turn in the order they were made. Of those that decide the split at most one
 * stands. Withdrawing it lets the one it superseded stand again, or leaves the split proposed.
 *
 * <p>Bounded by what people can do in a day. Belongs to the state's thread.
 */
final class Rulings {
    private final List<Ruling> all = new ArrayList<>();

    /** Asked for with every edge, so it is kept; null while the split is only proposed. */
    private Ruling standing;

    List<Ruling> all() {
        return Collections.unmodifiableList(all);
    }

    /** The one that decides the split; empty while it is only proposed. */
    Optional<Ruling> standing() {
        return Optional.ofNullable(standing);
    }

    /** What it says of the split; null while none stands. */
    Ruling.Decided decision() {
        return standing == null ? null : standing.decided();
    }

    private void findStanding() {
        standing = null;
        for (Ruling ruling : all) {
            if (ruling.decided() != null && ruling.isStanding()) {
                standing = ruling;
                return;
            }
        }
    }

    /** Its entry, −1 when none stands. */
    long standingEntry() {
        return standing().map(Ruling::entry).orElse(-1L);
    }

    Optional<Ruling> of(long entry) {
        return all.stream().filter(ruling -> ruling.entry() == entry).findFirst();
    }

    /** Adds a ruling; one that decides supersedes the one that stood. */
    void add(Ruling ruling) {
        if (ruling.decided() != null) {
            standing().ifPresent(r -> end(r, Ruling.Status.SUPERSEDED, ruling.entry()));
        }
        all.add(ruling);
        findStanding();
    }

    /** Withdraws a standing ruling; what it had superseded stands again. */
    void withdraw(long entry, long byEntry) {
        Ruling ruling = of(entry).filter(Ruling::isStanding).orElseThrow();
        end(ruling, Ruling.Status.WITHDRAWN, byEntry);
        if (ruling.decided() != null) {
            all.stream()
                    .filter(r -> r.status() == Ruling.Status.SUPERSEDED && r.endedBy() == entry)
                    .findFirst()
                    .ifPresent(r -> end(r, Ruling.Status.STANDING, -1));
        }
        findStanding();
    }

    private void end(Ruling ruling, Ruling.Status how, long byEntry) {
        all.set(all.indexOf(ruling), ruling.ended(how, byEntry));
    }

    void carry(Carry carry) {
        all.replaceAll(ruling -> ruling.carried(carry));
        findStanding();
    }

    @Override
    public String toString() {
        return all.toString();
    }
}
