package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.sim.twin.TwinDay;
import yardclock.sim.twin.TwinFigures;

import java.util.concurrent.Callable;

/** Plays an exam day in virtual time. */
@Command(
        name = "simulate",
        description = {
            "Plays an invented exam day in virtual time, without a broker, a browser or a file, and"
                    + " prints one line of figures.",
            "Exits 1 when anything the gateway concluded contradicts the truth."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SimulateCommand implements Callable<Integer> {
    private static final int CANDIDATES_MAX = 120;

    @Spec private CommandSpec spec;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "a seed gives one day, to the last entry (default: 1)")
    private long seed;

    @Option(
            names = "--candidates",
            paramLabel = "N",
            defaultValue = "88",
            description = "how many candidates come, 1 to 120 (default: ${DEFAULT-VALUE})")
    private int candidates;

    @Override
    public Integer call() {
        if (candidates < 1 || candidates > CANDIDATES_MAX) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--candidates takes a whole number from 1 to " + CANDIDATES_MAX);
        }
        TwinDay day = new TwinDay(seed, candidates);
        if (!day.play()) {
            spec.commandLine().getErr().println("The day did not come to its end.");
            return 1;
        }
        TwinFigures figures = day.figures();
        spec.commandLine().getOut().println(figures.line());
        return figures.agrees() ? 0 : 1;
    }
}
