package yardclock.app.boot;

import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.ExamPlanFile;
import yardclock.app.settings.LoadedPlan;
import yardclock.app.settings.Reading;
import yardclock.app.settings.Roster;
import yardclock.app.settings.RosterFile;
import yardclock.core.engine.Input;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The plan and roster this day runs by. Frozen at the directory's first start: a later start may
 * name the same files again, or none, but no others.
 */
record Day(Input.PlanFrozen plan, Input.RosterFrozen roster) {

    static Day of(ServeSettings settings, DayMemory memory) throws RefusedException {
        if (memory.plan().isEmpty() && settings.plan() != null && settings.roster() == null) {
            throw new RefusedException(
                    "A plan of your own needs its roster: add --roster FILE (number,name,group).");
        }
        return new Day(plan(settings, memory.plan()), roster(settings, memory.roster()));
    }

    private static Input.PlanFrozen plan(ServeSettings settings, Optional<Input.PlanFrozen> frozen)
            throws RefusedException {
        if (settings.plan() == null && frozen.isPresent()) {
            return frozen.get();
        }
        LoadedPlan loaded =
                settings.plan() == null
                        ? DemoPlan.plan()
                        : read(ExamPlanFile.read(settings.plan()));
        requireSame(
                "exam plan",
                settings.plan(),
                loaded.sha256(),
                frozen.map(Input.PlanFrozen::sha256));
        return frozen.orElseGet(() -> new Input.PlanFrozen(loaded.plan(), loaded.sha256()));
    }

    private static Input.RosterFrozen roster(
            ServeSettings settings, Optional<Input.RosterFrozen> frozen) throws RefusedException {
        if (settings.roster() == null && frozen.isPresent()) {
            return frozen.get();
        }
        Roster loaded =
                settings.roster() == null
                        ? DemoPlan.roster()
                        : read(RosterFile.read(settings.roster()));
        requireSame(
                "roster",
                settings.roster(),
                loaded.sha256(),
                frozen.map(Input.RosterFrozen::sha256));
        return frozen.orElseGet(() -> new Input.RosterFrozen(loaded.lines(), loaded.sha256()));
    }

    private static void requireSame(String what, Path file, String sha256, Optional<String> frozen)
            throws RefusedException {
        if (frozen.isPresent() && !frozen.get().equals(sha256)) {
            throw new RefusedException(
                    "The "
                            + what
                            + " of this day is frozen, and "
                            + file
                            + " is another one (its SHA-256 begins "
                            + sha256.substring(0, 8)
                            + ", the frozen one's "
                            + frozen.get().substring(0, 8)
                            + "). Leave the option out, or start another day with another --data"
                            + " directory.");
        }
    }

    private static <T> T read(Reading<T> reading) throws RefusedException {
        if (reading.isRefused()) {
            throw new RefusedException(reading.problems().text().strip());
        }
        return reading.value();
    }
}
