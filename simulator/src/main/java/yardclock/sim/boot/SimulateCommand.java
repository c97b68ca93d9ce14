package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.sim.referee.RoughFigures;
import yardclock.sim.twin.Scenario;
import yardclock.sim.twin.TwinDay;
import yardclock.sim.twin.TwinFigures;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;

/** Plays exam days in virtual time. */
@Command(
        name = "simulate",
        description = {
            "Plays an invented exam day in virtual time, without a broker, a browser or a file, and"
                    + " prints one line of figures.",
            "Exits 1 when anything the gateway concluded contradicts the truth, or, on a rough day,"
                    + " when too few splits were clean."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SimulateCommand implements Callable<Integer> {
    private static final int CANDIDATES_MAX = 120;
    private static final int SEEDS_MAX = 1_000;
    private static final int KIND_DAY = 88;
    private static final int ROUGH_DAY = 90;

    /** The scenarios as they are written. */
    enum Kind {
        kind,
        rough
    }

    @Spec private CommandSpec spec;

    @Option(
            names = "--scenario",
            paramLabel = "KIND",
            defaultValue = "kind",
            description = "kind: sensors only chatter; rough: all that goes wrong in a yard")
    private Kind scenario;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "a seed gives one day, to the last entry (default: 1)")
    private long seed;

    @Option(
            names = "--seeds",
            paramLabel = "N",
            defaultValue = "1",
            description = "plays so many days, from --seed on; rough days are also added up")
    private int seeds;

    @Option(
            names = "--candidates",
            paramLabel = "N",
            description = "how many candidates come, 1 to 120 (default: 88, rough 90)")
    private Integer candidates;

    @Option(
            names = "--wrong",
            description = "rough: tells of each split that was wrong or not clean, in words")
    private boolean wrong;

    @Override
    public Integer call() {
        check("--candidates", candidates == null ? 1 : candidates, CANDIDATES_MAX);
        check("--seeds", seeds, SEEDS_MAX);
        return scenario == Kind.rough ? rough() : kind();
    }

    private void check(String option, int value, int most) {
        if (value < 1 || value > most) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a whole number from 1 to " + most);
        }
    }

    private int kind() {
        int code = 0;
        for (long next = seed; next < seed + seeds; next++) {
            TwinDay day = new TwinDay(next, candidates == null ? KIND_DAY : candidates);
            if (!day.play()) {
                return unfinished(next);
            }
            TwinFigures figures = day.figures();
            out().println(figures.line());
            code = figures.agrees() ? code : 1;
        }
        return code;
    }

    private int rough() {
        RoughFigures all = null;
        int code = 0;
        for (long next = seed; next < seed + seeds; next++) {
            int many = candidates == null ? ROUGH_DAY : candidates;
            long begun = System.nanoTime();
            TwinDay day = new TwinDay(next, many, Scenario.ROUGH);
            code = day.play() ? code : unfinished(next);
            long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
            RoughFigures figures = day.roughFigures(millis);
            out().println(figures.line());
            out().flush();
            if (wrong) {
                day.referee().tales().forEach(out()::println);
            }
            all = all == null ? figures : all.plus(figures);
        }
        if (seeds > 1) {
            out().println(all.line());
        }
        return sayWhatIsBroken(all) ? 1 : code;
    }

    private boolean sayWhatIsBroken(RoughFigures figures) {
        PrintWriter err = spec.commandLine().getErr();
        List<String> broken = figures.broken();
        broken.forEach(err::println);
        err.flush();
        return !broken.isEmpty();
    }

    private int unfinished(long of) {
        spec.commandLine().getErr().println("The day of seed " + of + " did not come to its end.");
        return 1;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
