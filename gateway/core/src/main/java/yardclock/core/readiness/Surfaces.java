package yardclock.core.readiness;

import yardclock.core.course.Condition;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.time.TimeLines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the ground and the weather are like at each station and at the climb, by a person's word.
 *
 * <p>A note stands until the next one about the same spot; one about the whole yard is a note about
 * every spot. Where nobody has said anything, nothing is known: that is not dry. Notes are kept, so
 * that it can be told what was in force when somebody came to a station. Owned by one thread.
 */
public final class Surfaces {
    /** All stations and the climb at once. */
    public static final String YARD = "yard";

    /** The climb is no station of the timed course; what is noted there holds nobody on it. */
    public static final String CLIMB = "climb";

    /** A day sees some dozens at one spot; older ones stay in the journal. */
    static final int KEPT = 400;

    private final Map<String, List<Note>> spots = new LinkedHashMap<>();
    private final List<Condition> holding;
    private final TimeLines lines;

    /**
     * What somebody saw.
     *
     * @param where a station's id or {@link #CLIMB}
     * @param conditions the ground's first, then what the sun and the wind do; never empty
     * @param words as they were said; may be empty
     * @param line the time line of {@code atMicros}
     * @param atMicros gateway time, as it was read then
     */
    public record Note(
            String where,
            List<Condition> conditions,
            String words,
            String person,
            int line,
            long atMicros) {
        public Note {
            conditions = List.copyOf(conditions);
        }
    }

    /** What somebody says of a spot or of the whole yard. */
    public record Said(String where, Ground ground, boolean glare, boolean gust, String words) {
        List<Condition> conditions() {
            List<Condition> all = new ArrayList<>(List.of(ground.condition()));
            if (glare) {
                all.add(Condition.GLARE);
            }
            if (gust) {
                all.add(Condition.GUST);
            }
            return all;
        }
    }

    /**
     * @param lines the gateway's time lines, which the caller ties as it learns of ties
     */
    public Surfaces(ExamPlan plan, TimeLines lines) {
        this.lines = lines;
        this.holding = plan.surfaces().holdStation();
        for (Station station : plan.stations()) {
            spots.put(station.id(), new ArrayList<>());
        }
        spots.put(CLIMB, new ArrayList<>());
    }

    /** Every station in the course's order, then the climb. */
    public List<String> spots() {
        return List.copyOf(spots.keySet());
    }

    /** Whether something can be noted of it. */
    public boolean knows(String where) {
        return where != null && (where.equals(YARD) || spots.containsKey(where));
    }

    public void note(Said said, String person, long nowMicros) {
        if (said.where().equals(YARD)) {
            spots.keySet().forEach(spot -> add(spot, said, person, nowMicros));
        } else {
            add(said.where(), said, person, nowMicros);
        }
    }

    private void add(String spot, Said said, String person, long nowMicros) {
        List<Note> notes = spots.get(spot);
        notes.add(
                new Note(
                        spot, said.conditions(), said.words(), person, lines.current(), nowMicros));
        if (notes.size() > KEPT) {
            notes.remove(0);
        }
    }

    /** What stands of a spot now; empty while nobody has said anything. */
    public Optional<Note> now(String where) {
        List<Note> notes = spots.getOrDefault(where, List.of());
        return notes.isEmpty() ? Optional.empty() : Optional.of(notes.get(notes.size() - 1));
    }

    /**
     * The conditions in force at an instant of gateway time as it is read now; empty where nobody
     * had said anything by then.
     */
    public List<Condition> at(String where, long micros) {
        List<Note> notes = new ArrayList<>(spots.getOrDefault(where, List.of()));
        Collections.reverse(notes);
        return notes.stream()
                .filter(note -> micros(note) <= micros)
                .findFirst()
                .map(Note::conditions)
                .orElse(List.of());
    }

    /** The instant of a note as gateway time is read now. */
    public long micros(Note note) {
        return note.atMicros() + lines.carriedMicros(note.line());
    }

    /** Whether a station takes nobody now because of what was noted there. */
    public boolean holds(String station) {
        return !station.equals(CLIMB)
                && now(station).map(Note::conditions).orElse(List.of()).stream()
                        .anyMatch(holding::contains);
    }

    public boolean holdsAny() {
        return spots.keySet().stream().anyMatch(this::holds);
    }

    @Override
    public String toString() {
        return spots.values().toString();
    }
}
