package yardclock.app.boot;

import yardclock.app.clock.Anchor;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.util.Optional;

/**
 * What a start must know of the journal before the engine matters: the last epoch, the frozen plan
 * and roster, and where the time line ended. Fed with every entry; one thread.
 */
final class DayMemory {
    private Anchor anchor;
    private Input.PlanFrozen plan;
    private Input.RosterFrozen roster;
    private long lastMicros;

    void note(Entry entry) {
        lastMicros = entry.gatewayMicros();
        if (entry.input() instanceof Input.Epoch epoch) {
            anchor =
                    new Anchor(
                            epoch.machineBoot(),
                            entry.gatewayMicros(),
                            epoch.monotonicMicros(),
                            epoch.wallMicros(),
                            epoch.speed(),
                            epoch.continuous());
        } else if (entry.input() instanceof Input.PlanFrozen frozen) {
            plan = frozen;
        } else if (entry.input() instanceof Input.RosterFrozen frozen) {
            roster = frozen;
        }
    }

    Optional<Anchor> anchor() {
        return Optional.ofNullable(anchor);
    }

    Optional<Input.PlanFrozen> plan() {
        return Optional.ofNullable(plan);
    }

    Optional<Input.RosterFrozen> roster() {
        return Optional.ofNullable(roster);
    }

    long lastMicros() {
        return lastMicros;
    }
}
