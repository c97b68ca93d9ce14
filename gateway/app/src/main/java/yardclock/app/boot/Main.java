package yardclock.app.boot;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;

import yardclock.app.pins.ClimateWiring;
import yardclock.app.pins.OutputMap;
import yardclock.app.pins.PinMap;
import yardclock.core.engine.Engine;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;

/**
 * The gateway's command line. Exit codes: 0 done, 1 refused with a clear sentence, 2 wrong usage.
 */
@Command(
        name = "yardclock",
        description = "A timing gateway for a candidates' physical exam day.",
        mixinStandardHelpOptions = true,
        version = "Yardclock, version " + Engine.RULES_VERSION + " of the rules",
        subcommands = {
            ServeCommand.class,
            ReplayCommand.class,
            JournalCommand.class,
            CheckCommand.class,
            ClockCommand.class,
            DossierCommand.class,
            HeatCommand.class,
            RejudgeCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:refused, with a sentence that says why", "2:wrong usage"})
public final class Main {
    static final int REFUSED = 1;

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
        return new CommandLine(new Main())
                .registerConverter(HostPort.class, text -> read(HostPort::parse, text))
                .registerConverter(PinMap.class, text -> read(PinMap::parse, text))
                .registerConverter(OutputMap.class, text -> read(OutputMap::parse, text))
                .registerConverter(ClimateWiring.class, text -> read(ClimateWiring::parse, text))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(Main::refuse);
    }

    private static <T> T read(Function<String, T> parse, String text) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new CommandLine.TypeConversionException(e.getMessage());
        }
    }

    private static int refuse(Exception e, CommandLine command, ParseResult parsed) {
        if (e instanceof RefusedException) {
            command.getErr().println(e.getMessage());
        } else {
            command.getErr().println("This should not have happened: " + e);
            e.printStackTrace(command.getErr());
        }
        return REFUSED;
    }
}
