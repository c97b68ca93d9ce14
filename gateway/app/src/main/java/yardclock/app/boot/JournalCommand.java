package yardclock.app.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import yardclock.app.journal.JournalReader;
import yardclock.app.journal.JournalRefusedException;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Prints what a journal holds. */
@Command(
        name = "journal",
        description = {
            "Prints a journal's entries in order, one a line: entry, kind, gatewayMicros, then the"
                    + " input's own fields.",
            "The chain is checked on the way; at the first broken entry the printing ends."
        },
        mixinStandardHelpOptions = true)
final class JournalCommand implements Callable<Integer> {
    /** The forms a journal can be printed in. */
    enum Form {
        NDJSON
    }

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the journal, as DIR/journal.db")
    private Path file;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "ndjson",
            description = "ndjson: one JSON object a line (the default and only one)")
    private Form form;

    @Override
    public Integer call() throws RefusedException {
        // Without a flush a line: a day has a hundred thousand of them.
        PrintWriter out = new PrintWriter(spec.commandLine().getOut(), false);
        try (JournalReader reader = JournalReader.open(file)) {
            switch (form) {
                case NDJSON -> reader.lines(out::println);
            }
            return 0;
        } catch (JournalRefusedException e) {
            throw new RefusedException(e.getMessage(), e);
        } finally {
            out.flush();
        }
    }
}
