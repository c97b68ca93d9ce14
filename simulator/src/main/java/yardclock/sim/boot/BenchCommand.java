package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.app.recorded.RecordingFiles.UnreadableException;
import yardclock.sim.clockbench.ClockTable;
import yardclock.sim.clockbench.RecordedHours;
import yardclock.sim.clockbench.SimulatedHour;
import yardclock.sim.clockbench.Weather;
import yardclock.sim.demo.DemoFailedException;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** Measurements, each printed beside a baseline of the same run. */
@Command(
        name = "bench",
        description = "Measurements, each printed beside baselines of the same run.",
        mixinStandardHelpOptions = true)
final class BenchCommand implements Runnable {
    private static final double SLOWEST_PPM = 5;
    private static final double FASTEST_PPM = 40;

    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to measure: clock");
    }

    @Command(
            name = "clock",
            description = {
                "How wrong splits between two units are, by the gateway's clock rules and by"
                        + " plainer methods, on recorded and on freshly simulated hours."
            },
            mixinStandardHelpOptions = true)
    int clock(
            @Option(
                            names = "--runs",
                            defaultValue = "24",
                            paramLabel = "N",
                            description = "simulated hours a weather, 1 to 200 (default: 24)")
                    int runs,
            @Option(
                            names = "--seed",
                            defaultValue = "1",
                            paramLabel = "N",
                            description = "seed of the first hour (default: 1)")
                    long seed,
            @Option(
                            names = "--recorded",
                            defaultValue = "gateway/core/src/test/resources/reference/clock",
                            paramLabel = "DIR",
                            description = "folder of recorded runs (default: ${DEFAULT-VALUE})")
                    Path recorded)
            throws DemoFailedException {
        if (runs < 1 || runs > 200) {
            throw new ParameterException(spec.commandLine(), "--runs must be 1 to 200");
        }
        PrintWriter out = spec.commandLine().getOut();
        ClockTable.printHead(out);
        try {
            for (String name : RecordedHours.names(recorded)) {
                ClockTable table = new ClockTable("recorded " + name);
                table.take(RecordedHours.read(recorded, name), seed);
                table.print(out);
            }
        } catch (IOException | UnreadableException e) {
            throw new DemoFailedException(e.getMessage(), e);
        }
        for (Weather weather : List.of(Weather.BURSTY, Weather.POWER_SAVE, Weather.HOSTILE)) {
            ClockTable table = new ClockTable(weather.name() + ", " + runs + " h");
            for (long run = seed; run < seed + runs; run++) {
                table.take(SimulatedHour.of(weather, run, SLOWEST_PPM, FASTEST_PPM), run);
            }
            table.print(out);
        }
        return 0;
    }
}
