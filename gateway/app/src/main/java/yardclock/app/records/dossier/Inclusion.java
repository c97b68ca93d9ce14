package yardclock.app.records.dossier;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.ruling.Act;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnEvidence;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Which of the day's entries go into a dossier: what the gateway, the plan, the units' clocks and
 * health and the weather say, the edges of this number's own turns, the rulings about it or about
 * everybody, and who held the tablets these came from. Everybody else's edges and rulings stay out.
 *
 * <p>Of clocks, health and weather only what lies within a margin of the attempt: a whole day of
 * them is a hundred times as much, and says nothing of it.
 */
public final class Inclusion implements Predicate<Entry> {
    private final Play whole;
    private final long marginMicros;
    private final int number;
    private final Set<String> devices;
    private final Set<EdgeKey> edges = new TreeSet<>();
    private final Set<String> codes = new TreeSet<>();
    private final Set<Long> refusedForOthers = new TreeSet<>();

    private Inclusion(Play whole, long marginMicros) {
        this.whole = whole;
        this.marginMicros = marginMicros;
        this.number = whole.number;
        this.devices = whole.devices;
        this.codes.addAll(whole.codes(devices));
        whole.rulings.stream()
                .filter(Play.Ruled::isRefusedForOthers)
                .forEach(ruled -> refusedForOthers.add(ruled.entry().number()));
        whole.attempt().ifPresent(attempt -> attempt.allTurns().forEach(this::addEdges));
    }

    /** For the number of a play over the whole journal. */
    public static Inclusion of(Play whole, long marginMicros) {
        return new Inclusion(whole, marginMicros);
    }

    private void addEdges(Turn turn) {
        TurnEvidence.of(turn).edges().stream().map(TimedEdge::key).forEach(edges::add);
    }

    @Override
    public boolean test(Entry entry) {
        Input input = entry.input();
        return switch (input.kind()) {
            case EPOCH, WALL_STEPPED, PLAN, ROSTER -> true;
            case HEALTH, UNIT_DOWN, SETTINGS_APPLIED, DEADLINE -> isNear(entry);
            case EXCHANGE, ANSWER_REFUSED, CLIMATE -> isNear(entry);
            case EDGE -> has((Input.Edge) input);
            case TABLET_EXCHANGE ->
                    isNear(entry) && devices.contains(((Input.TabletExchange) input).device());
            case CODE -> codes.contains(((Input.CodeIssued) input).codeSha256());
            case ENROLMENT -> devices.contains(((Input.Enrolled) input).device());
            case RULING -> has(((Input.Ruling) input).act()) && isToKeep(entry);
        };
    }

    private boolean isNear(Entry entry) {
        return whole.isNear(entry.gatewayMicros(), marginMicros);
    }

    private boolean has(Input.Edge edge) {
        return edges.contains(new EdgeKey(edge.unit(), edge.boot(), edge.seq()));
    }

    /** What was refused then for the others' sake may be without them: it stays out. */
    private boolean isToKeep(Entry entry) {
        return !refusedForOthers.contains(entry.number());
    }

    private boolean has(Act act) {
        return Acts.concerns(act, number) && Acts.edge(act).map(edges::contains).orElse(true);
    }
}
