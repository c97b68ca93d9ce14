package yardclock.core.readiness;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which teams were called away, by whose word, since when and why. All others are here: that they
 * are here before the first release is for the start of the day. Owned by one thread.
 */
public final class StandBy {
    private final Map<Team, Absence> away = new EnumMap<>(Team.class);

    /**
     * A team that was called away.
     *
     * @param words as they were said; may be empty
     * @param person who said so
     * @param sinceMicros gateway time
     */
    public record Absence(Team team, String words, String person, long sinceMicros) {}

    /** The team was called away; until it is back nothing changes that. */
    public void leave(Absence absence) {
        away.putIfAbsent(absence.team(), absence);
    }

    public void comeBack(Team team) {
        away.remove(team);
    }

    public Optional<Absence> absence(Team team) {
        return Optional.ofNullable(away.get(team));
    }

    public boolean isAway(Team team) {
        return away.containsKey(team);
    }

    /** Everybody who is away, in the order of the teams. */
    public Collection<Absence> absences() {
        return Collections.unmodifiableCollection(away.values());
    }

    /** The teams whose absence holds new releases; empty when none does. */
    public List<Team> holding() {
        return away.keySet().stream().filter(Team::isNeededOnCourse).toList();
    }

    @Override
    public String toString() {
        return away.values().toString();
    }
}
