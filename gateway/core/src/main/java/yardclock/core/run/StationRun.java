package yardclock.core.run;

import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Carry;
import yardclock.core.time.TimeLines;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.LongUnaryOperator;

/**
 * One station's round: ready, in use, to be reset, ready again; and its turns. Edges of the reset
 * itself belong to the turn that is over, and start nothing.
 */
public final class StationRun {
    /** A station goes round these three. */
    public enum State {
        READY,
        IN_USE,
        TO_BE_RESET
    }

    /** Late readings older than this many turns are only counted; they stay in the journal. */
    static final int TURNS_KEPT = 16;

    Station station;
    private final Set<String> units;
    final UsualTimes usual;
    private final TimeLines lines;
    State state = State.READY;
    long sinceMicros;
    long strays;
    private int rounds;
    private final Deque<Turn> turns = new ArrayDeque<>();

    /** Told of each turn that is too old to be kept. */
    private final Consumer<Turn> putAway;

    private boolean hasPutAway;

    StationRun(Station station, TimeLines lines, Consumer<Turn> putAway, long nowMicros) {
        this.putAway = putAway;
        this.station = station;
        this.units = new TreeSet<>();
        this.usual = new UsualTimes(station.timing());
        station.sensors().forEach(sensor -> units.add(sensor.unit()));
        this.lines = lines;
        this.sinceMicros = nowMicros;
        turns.addLast(new Turn(station, lines, nowMicros));
    }

    public Station station() {
        return station;
    }

    public State state() {
        return state;
    }

    public long sinceMicros() {
        return sinceMicros;
    }

    /** The candidate whose turn it is, 0 for none. */
    public int number() {
        return state == State.IN_USE ? current().number : 0;
    }

    /** Whether a mark of this turn and one of another may have been in the other order. */
    public boolean isTied(Turn turn) {
        return turns.stream()
                .filter(other -> other != turn && other.number != 0)
                .anyMatch(other -> isTied(turn, other));
    }

    private static boolean isTied(Turn one, Turn other) {
        return Mark.isTie(one.start(), other.start())
                || Mark.isTie(one.finish(), other.start())
                || Mark.isTie(one.start(), other.finish());
    }

    Set<String> units() {
        return units;
    }

    /** How many candidates have left it. */
    public int rounds() {
        return rounds;
    }

    /** Edges that no turn could use. */
    public long strays() {
        return strays;
    }

    /** Whether one of this station's triggers uses the field unit. */
    public boolean uses(String unit) {
        return units.contains(unit);
    }

    boolean hasPutAway() {
        return hasPutAway;
    }

    Deque<Turn> turns() {
        return turns;
    }

    Turn current() {
        return turns.getLast();
    }

    /** The turn an edge belongs to by its time. */
    Optional<Turn> turnOf(TimedEdge edge) {
        for (var newestFirst = turns.descendingIterator(); newestFirst.hasNext(); ) {
            Turn turn = newestFirst.next();
            if (edge.stamp().micros() >= turn.openMicros) {
                return Optional.of(turn);
            }
        }
        return Optional.empty();
    }

    void moveTo(State next, long nowMicros) {
        state = next;
        sinceMicros = nowMicros;
        rounds += next == State.TO_BE_RESET ? 1 : 0;
        if (next == State.READY) {
            turns.addLast(new Turn(station, lines, nowMicros));
            if (turns.size() > TURNS_KEPT) {
                hasPutAway = true;
                putAway.accept(turns.removeFirst());
            }
        }
    }

    /** How often its triggers were adjusted on the bench. */
    private int adjustments() {
        return station.triggers().stream().mapToInt(Trigger::adjustment).sum();
    }

    void carry(Carry carry, LongUnaryOperator others) {
        sinceMicros = others.applyAsLong(sinceMicros);
        turns.forEach(turn -> turn.carry(carry, others));
    }

    @Override
    public String toString() {
        return station.id()
                + " "
                + state
                + " "
                + sinceMicros
                + " "
                + strays
                + " "
                + rounds
                + " "
                + usual
                + " "
                + turns
                + (adjustments() == 0 ? "" : " adjusted " + station.triggers());
    }
}
