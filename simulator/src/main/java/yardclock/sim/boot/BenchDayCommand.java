package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.sim.twin.DayCost;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

/** How long a day in virtual time takes, beside the least that any journal of it would cost. */
@Command(
        name = "day",
        description = {
            "How long a nine-station day in virtual time takes, the first one of a new process and"
                + " a later one, what of that the rules take, and both as multiples of a plain"
                + " baseline of the same run: writing and hashing the text of the day's entries."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class BenchDayCommand implements Callable<Integer> {
    private static final int CANDIDATES_MAX = 120;

    @Spec private CommandSpec spec;

    @Option(
            names = "--seed",
            defaultValue = "7",
            paramLabel = "N",
            description = "seed of the day (default: 7)")
    private long seed;

    @Option(
            names = "--candidates",
            defaultValue = "90",
            paramLabel = "N",
            description = "how many candidates come, 1 to 120 (default: 90)")
    private int candidates;

    @Override
    public Integer call() {
        if (candidates < 1 || candidates > CANDIDATES_MAX) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--candidates takes a whole number from 1 to " + CANDIDATES_MAX);
        }
        PrintWriter out = spec.commandLine().getOut();
        DayCost.measure(seed, candidates).print(out);
        return 0;
    }
}
