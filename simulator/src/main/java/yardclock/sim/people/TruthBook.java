package yardclock.sim.people;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/**
 * What really happened, in the stage's exam time: when each candidate started and finished each
 * station, and how long they were made to wait. Only a simulation has such a book. Written on the
 * stage, read from any thread.
 */
public final class TruthBook {
    private final Map<Visit, Instants> visits = new LinkedHashMap<>();
    private final Map<Integer, List<Wait>> waits = new LinkedHashMap<>();

    /** One candidate at one station. */
    public record Visit(int number, String station) {}

    /** The instants of the edges the start and the finish rule should stamp; −1 while not yet. */
    public record Instants(long startMicros, long finishMicros) {
        public OptionalLong split() {
            return finishMicros < 0
                    ? OptionalLong.empty()
                    : OptionalLong.of(finishMicros - startMicros);
        }
    }

    /** A wait for a station that was not ready. */
    public record Wait(long fromMicros, long toMicros) {}

    synchronized void started(int number, String station, long at) {
        visits.put(new Visit(number, station), new Instants(at, -1));
    }

    synchronized void finished(int number, String station, long at) {
        visits.computeIfPresent(
                new Visit(number, station), (visit, was) -> new Instants(was.startMicros(), at));
    }

    public synchronized void waited(int number, long from, long to) {
        waits.computeIfAbsent(number, any -> new ArrayList<>()).add(new Wait(from, to));
    }

    /** Null when this candidate was never at this station. */
    public synchronized Instants at(int number, String station) {
        return visits.get(new Visit(number, station));
    }

    public synchronized Map<Visit, Instants> all() {
        return new LinkedHashMap<>(visits);
    }

    public synchronized Set<Integer> numbers() {
        Set<Integer> numbers = new TreeSet<>();
        visits.keySet().forEach(visit -> numbers.add(visit.number()));
        return numbers;
    }

    public synchronized long waitedMicros(int number) {
        return waits.getOrDefault(number, List.of()).stream()
                .mapToLong(wait -> wait.toMicros() - wait.fromMicros())
                .sum();
    }
}
