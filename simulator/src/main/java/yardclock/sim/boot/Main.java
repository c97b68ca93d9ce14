package yardclock.sim.boot;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;

import yardclock.sim.demo.DemoFailedException;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** The simulator's commands. */
@Command(
        name = "yardclock",
        description = "Simulated exam days.",
        mixinStandardHelpOptions = true,
        version = "Yardclock 0.1.0",
        subcommands = {DemoCommand.class, SimulateCommand.class, BenchCommand.class},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:refused, with a sentence that says why", "2:wrong usage"})
public final class Main {
    private static final int REFUSED = 1;

    private Main() {}

    public static void main(String[] arguments) {
        System.exit(
                commandLine()
                        .setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8))
                        .setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8))
                        .execute(arguments));
    }

    /** The command line without a process around it, for tests. */
    static CommandLine commandLine() {
        return new CommandLine(new Main()).setExecutionExceptionHandler(Main::refuse);
    }

    private static int refuse(Exception e, CommandLine command, ParseResult parsed) {
        if (e instanceof DemoFailedException) {
            command.getErr().println(e.getMessage());
        } else {
            command.getErr().println("This should not have happened: " + e);
            e.printStackTrace(command.getErr());
        }
        return REFUSED;
    }
}
