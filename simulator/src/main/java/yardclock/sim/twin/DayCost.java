package yardclock.sim.twin;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.fact.Canonical;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/**
 * What a day in virtual time costs, in nanoseconds of wall time, beside a baseline: the text of
 * each entry written and hashed onto the one before, which any journal of the day would need.
 *
 * @param first the first day of the process, which has to be compiled on the way
 * @param later a day after it
 * @param rules the rules alone, over the day's entries
 * @param baseline the text of the entries alone
 */
public record DayCost(int entries, long first, long later, long rules, long baseline) {
    private static final int ROUNDS = 3;

    /** Plays the same day twice, then takes its journal apart. */
    public static DayCost measure(long seed, int candidates) {
        long first = nanos(() -> new TwinDay(seed, candidates).play());
        TwinDay day = new TwinDay(seed, candidates);
        long later = nanos(day::play);
        List<Entry> journal = day.journal();
        long rules = least(() -> apply(journal));
        long baseline = least(() -> hash(journal));
        return new DayCost(journal.size(), first, later, rules, baseline);
    }

    private static void apply(List<Entry> journal) {
        Engine engine = new Engine();
        journal.forEach(engine::apply);
    }

    private static void hash(List<Entry> journal) {
        String chain = "";
        for (Entry entry : journal) {
            chain = new Canonical().line(chain, entry).hex();
        }
        if (chain.isEmpty()) {
            throw new IllegalStateException("a day without an entry");
        }
    }

    private static long least(Runnable work) {
        long least = Long.MAX_VALUE;
        for (int round = 0; round < ROUNDS; round++) {
            least = Math.min(least, nanos(work));
        }
        return least;
    }

    private static long nanos(Runnable work) {
        long begun = System.nanoTime();
        work.run();
        return System.nanoTime() - begun;
    }

    public void print(PrintWriter out) {
        out.println("| " + entries + " entries | seconds | ÷ baseline |");
        out.println("| --- | --- | --- |");
        print(out, "the first day of a process", first);
        print(out, "the same day again", later);
        print(out, "the rules alone, over its journal", rules);
        print(out, "baseline: each entry's text, hashed", baseline);
        out.flush();
    }

    private void print(PrintWriter out, String what, long nanos) {
        double ratio = (double) nanos / baseline;
        out.println(String.format(Locale.ROOT, "| %s | %.2f | %.1f |", what, nanos / 1e9, ratio));
    }
}
