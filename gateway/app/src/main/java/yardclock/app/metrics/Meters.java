package yardclock.app.metrics;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;

import yardclock.app.lane.LaneMeter;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;
import java.util.function.ToDoubleFunction;

/** Counts and times what the lane, the field units' messages and the tablets do. Any thread. */
public final class Meters implements LaneMeter {
    /** Different reasons counted apart; reasons are a closed list, so this is only a fuse. */
    private static final int REASONS_MAX = 100;

    private final PrometheusMeterRegistry registry =
            new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Map<FactKind, Counter> facts = new EnumMap<>(FactKind.class);
    private final Map<String, Counter> rejections = new ConcurrentHashMap<>();
    private final Counter entries = counter("yardclock.entries", "Entries kept in the journal");
    private final Counter lost = counter("yardclock.inputs.lost", "Inputs that were not kept");
    private final Timer commit = timer("yardclock.commit", "One batch's commit to the journal");
    private final Timer drawn =
            timer("yardclock.edge.to.frame", "From an edge's arrival to frames that show it");

    public Meters() {
        fact(FactKind.EDGE_TAKEN, "yardclock.edges", "Raw edges taken");
        fact(FactKind.EDGE_DUPLICATE, "yardclock.edges.duplicate", "Edges delivered again");
        fact(FactKind.EDGE_CONFLICT, "yardclock.edges.conflict", "Same number, other content");
        fact(FactKind.EDGE_REFUSED, "yardclock.edges.refused", "Edges that cannot be");
        fact(FactKind.GAP_OPENED, "yardclock.gaps.opened", "Ranges found missing");
        fact(FactKind.GAP_CLOSED, "yardclock.gaps.closed", "Ranges filled again");
        fact(FactKind.EXCHANGE_TAKEN, "yardclock.exchanges", "Clock exchanges accepted");
        fact(FactKind.EXCHANGE_REFUSED, "yardclock.exchanges.refused", "Clock exchanges refused");
    }

    private void fact(FactKind kind, String name, String words) {
        facts.put(kind, counter(name, words));
    }

    private Counter counter(String name, String words) {
        return Counter.builder(name).description(words).register(registry);
    }

    private Timer timer(String name, String words) {
        return Timer.builder(name)
                .description(words)
                .publishPercentiles(0.5, 0.99)
                .register(registry);
    }

    /** Inputs that wait for the lane. */
    public void laneDepth(IntSupplier depth) {
        gauge("yardclock.lane.depth", "Inputs waiting for the lane", depth);
    }

    /** Live streams that are open now. */
    public void tablets(IntSupplier open) {
        gauge("yardclock.tablets", "Live streams open to tablets", open);
    }

    private void gauge(String name, String words, IntSupplier value) {
        Gauge.builder(name, () -> value.getAsInt()).description(words).register(registry);
    }

    /**
     * Something from outside was turned away.
     *
     * @param reason a reason code of a closed list, never text from outside
     */
    public void rejected(String reason) {
        boolean known = rejections.containsKey(reason) || rejections.size() < REASONS_MAX;
        rejections.computeIfAbsent(known ? reason : "other", this::rejection).increment();
    }

    private Counter rejection(String reason) {
        return Counter.builder("yardclock.rejections")
                .description("Requests and messages turned away, by reason")
                .tag("reason", reason)
                .register(registry);
    }

    /**
     * Field units' messages turned away for one reason, counted elsewhere.
     *
     * @param counted who counts them; held weakly, so somebody else must keep it
     */
    public <T> void messagesRejected(String reason, T counted, ToDoubleFunction<T> count) {
        FunctionCounter.builder("yardclock.messages.rejected", counted, count)
                .description("Messages of field units turned away, by reason")
                .tag("reason", reason)
                .register(registry);
    }

    /**
     * Looks at a climate sensor that is wired to the board, by what became of them.
     *
     * @param counted who counts them; held weakly, so somebody else must keep it
     */
    public <T> void climate(String unit, String outcome, T counted, ToDoubleFunction<T> count) {
        FunctionCounter.builder("yardclock.climate.looks", counted, count)
                .description("Looks at a climate sensor of the board, by what became of them")
                .tag("unit", unit)
                .tag("outcome", outcome)
                .register(registry);
    }

    @Override
    public void committed(int batch, long realNanos) {
        entries.increment(batch);
        commit.record(realNanos, TimeUnit.NANOSECONDS);
    }

    @Override
    public void lost(int batch) {
        lost.increment(batch);
    }

    @Override
    public void applied(Entry entry, Outcome outcome) {
        for (Fact fact : outcome.facts()) {
            Counter counter = facts.get(fact.kind());
            if (counter != null) {
                counter.increment();
            }
        }
    }

    @Override
    public void drawn(long realNanos) {
        if (realNanos >= 0) {
            drawn.record(realNanos, TimeUnit.NANOSECONDS);
        }
    }

    /** Everything in the text format that scrapers read. */
    public String scrape() {
        return registry.scrape();
    }
}
