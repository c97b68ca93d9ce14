package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Measurements, each printed beside a baseline of the same run. */
@Command(
        name = "bench",
        description = "Measurements, each printed beside baselines of the same run.",
        mixinStandardHelpOptions = true,
        subcommands = {BenchClockCommand.class, BenchDayCommand.class})
final class BenchCommand implements Runnable {
    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to measure: clock or day");
    }
}
