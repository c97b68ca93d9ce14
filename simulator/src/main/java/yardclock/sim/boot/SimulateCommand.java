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
            description =
                    "plays so many days, from --seed on, as many at once as there are cores; rough"
                            + " days are also added up")
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

    private int code;
    private RoughFigures all;

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
        int many = candidates == null ? KIND_DAY : candidates;
        DaysAtOnce.play(seed, seeds, next -> playKind(next, many), this::tell);
        return code;
    }

    private static Played playKind(long seed, int many) {
        TwinDay day = new TwinDay(seed, many);
        boolean isOver = day.play();
        return new Played(seed, isOver, isOver ? day.figures() : null, null, List.of());
    }

    private int rough() {
        int many = candidates == null ? ROUGH_DAY : candidates;
        DaysAtOnce.play(seed, seeds, next -> playRough(next, many), this::tell);
        if (seeds > 1) {
            out().println(all.line());
        }
        return sayWhatIsBroken(all) ? 1 : code;
    }

    private Played playRough(long seed, int many) {
        long begun = System.nanoTime();
        TwinDay day = new TwinDay(seed, many, Scenario.ROUGH);
        boolean isOver = day.play();
        long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
        List<String> tales = wrong ? day.referee().tales() : List.of();
        return new Played(seed, isOver, null, day.roughFigures(millis), tales);
    }

    /** What is left of a day; of the two figures only those of its scenario. */
    private record Played(
            long seed, boolean isOver, TwinFigures kind, RoughFigures rough, List<String> tales) {}

    /** In the order of the seeds. */
    private void tell(Played day) {
        code = day.isOver() ? code : unfinished(day.seed());
        if (day.rough() != null) {
            out().println(day.rough().line());
            day.tales().forEach(out()::println);
            all = all == null ? day.rough() : all.plus(day.rough());
        } else if (day.kind() != null) {
            out().println(day.kind().line());
            code = day.kind().agrees() ? code : 1;
        }
        out().flush();
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
