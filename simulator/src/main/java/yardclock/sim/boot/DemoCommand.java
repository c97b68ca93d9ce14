package yardclock.sim.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import yardclock.app.settings.DemoPlan;
import yardclock.sim.demo.Demo;
import yardclock.sim.demo.DemoSettings;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Runs the demo day. */
@Command(
        name = "demo",
        description = {
            "Runs a whole invented exam day: the gateway with its broker, and beside it field"
                    + " units, candidates, proctors, coordinator, crew and weather.",
            "It prints the pages' addresses; watch, or take part."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class DemoCommand implements Callable<Integer> {
    private static final int ROSTER = DemoPlan.roster().lines().size();

    @Spec private CommandSpec spec;

    @Option(
            names = "--speed",
            paramLabel = "N",
            defaultValue = "10",
            description = "exam time runs N times as fast as real time, 1 to 60 (default: 10)")
    private int speed;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "the same seed gives the same candidates and outcomes (default: 1)")
    private long seed;

    @Option(
            names = "--candidates",
            paramLabel = "N",
            defaultValue = "88",
            description = "how many candidates come (default: ${DEFAULT-VALUE})")
    private int candidates;

    @Option(
            names = "--http",
            paramLabel = "HOST:PORT",
            defaultValue = "127.0.0.1:8470",
            description = "where the pages are (default: ${DEFAULT-VALUE})")
    private String http;

    @Option(
            names = "--mqtt",
            paramLabel = "HOST:PORT",
            defaultValue = "127.0.0.1:18830",
            description = "where the embedded broker listens (default: ${DEFAULT-VALUE})")
    private String mqtt;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "keep the day here; without it, in a temporary directory")
    private Path data;

    @Option(
            names = "--until-finished",
            description = "end when every candidate is done, and print one line of figures")
    private boolean untilFinished;

    @Override
    public Integer call() throws Exception {
        inRange("--speed", speed, DemoSettings.SPEED_MAX);
        inRange("--candidates", candidates, ROSTER);
        DemoSettings settings =
                new DemoSettings(
                        speed,
                        seed,
                        candidates,
                        address("--http", http),
                        address("--mqtt", mqtt),
                        DemoSettings.EMBEDDED,
                        data,
                        untilFinished);
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        new Demo(settings, err, out).run();
        return 0;
    }

    private void inRange(String option, int value, int most) {
        if (value < 1 || value > most) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a whole number from 1 to " + most);
        }
    }

    private String address(String option, String text) {
        int colon = text.lastIndexOf(':');
        boolean good = colon > 0 && text.substring(colon + 1).matches("\\d{1,5}");
        int port = good ? Integer.parseInt(text.substring(colon + 1)) : 0;
        if (port < 1 || port > 65_535) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes HOST:PORT, as 127.0.0.1:8470");
        }
        return text;
    }
}
