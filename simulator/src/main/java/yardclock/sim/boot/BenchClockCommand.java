package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.app.recorded.RecordingFiles.UnreadableException;
import yardclock.sim.clockbench.CalibrationTable;
import yardclock.sim.clockbench.ClockTable;
import yardclock.sim.clockbench.CostFigures;
import yardclock.sim.clockbench.Crystals;
import yardclock.sim.clockbench.Judgeable;
import yardclock.sim.clockbench.JumpFigures;
import yardclock.sim.clockbench.RecordedHours;
import yardclock.sim.clockbench.SimulatedHour;
import yardclock.sim.clockbench.Weather;
import yardclock.sim.demo.DemoFailedException;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** The clock rules beside plainer methods: splits, jumps found out, and what it all costs. */
@Command(
        name = "clock",
        description = {
            "How wrong splits between two units are, by the gateway's clock rules and by plainer"
                    + " methods, on recorded and on freshly simulated hours; what calibrating the"
                    + " units does to it; how soon a counter that jumped is found out; and what an"
                    + " exchange costs."
        },
        mixinStandardHelpOptions = true)
final class BenchClockCommand implements Callable<Integer> {
    private static final List<Weather> WEATHERS =
            List.of(Weather.BURSTY, Weather.POWER_SAVE, Weather.HOSTILE);
    private static final List<Double> JUMPS_SECONDS = List.of(0.02, 0.01);

    @Spec private CommandSpec spec;

    @Option(
            names = "--runs",
            defaultValue = "24",
            paramLabel = "N",
            description = "simulated hours a weather, 1 to 200 (default: 24)")
    private int runs;

    @Option(
            names = "--jumps",
            defaultValue = "200",
            paramLabel = "N",
            description =
                    "simulated hours with a jump of the counter, a weather, 1 to 2000"
                            + " (default: 200)")
    private int jumps;

    @Option(
            names = "--seed",
            defaultValue = "1",
            paramLabel = "N",
            description = "seed of the first hour (default: 1)")
    private long seed;

    @Option(
            names = "--recorded",
            defaultValue = "gateway/core/src/test/resources/reference/clock",
            paramLabel = "DIR",
            description = "folder of recorded runs (default: ${DEFAULT-VALUE})")
    private Path recorded;

    @Override
    public Integer call() throws DemoFailedException {
        require("--runs", runs, 200);
        require("--jumps", jumps, 2_000);
        PrintWriter out = spec.commandLine().getOut();
        ClockTable.printHead(out);
        recordedSplits(out);
        simulatedSplits(out, Crystals.USUAL, "");
        simulatedSplits(out, Crystals.POOR, ", crystals 70–80 ppm");
        simulatedSplits(out, Crystals.BROKEN, ", crystals 195–205 ppm");
        out.println();
        CalibrationTable.printHead(out);
        calibrated(out);
        out.println();
        JumpFigures.printHead(out);
        JUMPS_SECONDS.forEach(jump -> jumps(out, jump));
        out.println();
        CostFigures cost = new CostFigures();
        cost.take(seed);
        cost.print(out);
        return 0;
    }

    private void require(String name, int given, int most) {
        if (given < 1 || given > most) {
            throw new ParameterException(spec.commandLine(), name + " must be 1 to " + most);
        }
    }

    private void recordedSplits(PrintWriter out) throws DemoFailedException {
        try {
            for (String name : RecordedHours.names(recorded)) {
                ClockTable table = new ClockTable("recorded " + name);
                table.take(RecordedHours.read(recorded, name), seed);
                table.print(out);
            }
        } catch (IOException | UnreadableException e) {
            throw new DemoFailedException(e.getMessage(), e);
        }
    }

    private void simulatedSplits(PrintWriter out, Crystals crystals, String which) {
        for (Weather weather : WEATHERS) {
            ClockTable table = new ClockTable(weather.name() + which + ", " + runs + " h");
            for (long run = seed; run < seed + runs; run++) {
                table.take(hour(weather, run, crystals), run);
            }
            table.print(out);
        }
    }

    private void calibrated(PrintWriter out) {
        for (Weather weather : WEATHERS) {
            CalibrationTable table = new CalibrationTable(weather.name() + ", " + runs + " h");
            for (long run = seed; run < seed + runs; run++) {
                table.take(weather, run, Crystals.USUAL);
            }
            table.print(out);
        }
    }

    private static Judgeable hour(Weather weather, long seed, Crystals crystals) {
        return SimulatedHour.of(weather, seed, crystals.slowest(), crystals.fastest());
    }

    private void jumps(PrintWriter out, double jumpSeconds) {
        for (Weather weather : WEATHERS) {
            JumpFigures figures = new JumpFigures(weather, jumpSeconds);
            for (long hour = seed; hour < seed + jumps; hour++) {
                figures.take(hour);
            }
            figures.print(out);
        }
    }
}
