package yardclock.app.boot;

import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import yardclock.app.json.Json;

import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Derives the state again from a journal and prints its fingerprint. */
@Command(
        name = "replay",
        description = {
            "Checks a journal's chain, works through all its entries, and prints the state's digest"
                    + " as one line of JSON.",
            "Nothing is changed. It may be done while a gateway runs on the journal."
        },
        mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the journal, as DIR/journal.db")
    private Path file;

    @Option(
            names = "--entries",
            paramLabel = "N",
            description = "derive the state as it was after so many entries; else after all")
    private Long last;

    @Override
    public Integer call() throws RefusedException {
        if (last != null && last < 1) {
            throw new RefusedException("--entries " + last + ": a journal begins with entry 1.");
        }
        Replayed replayed = Replayed.of(file, last == null ? Long.MAX_VALUE : last);
        if (last != null && last > replayed.entries()) {
            throw new RefusedException("The journal has " + replayed.entries() + " entries only.");
        }
        ObjectNode line = Json.mapper().createObjectNode();
        line.put("entries", replayed.engine().lastEntry());
        line.put("digest", replayed.engine().digest());
        spec.commandLine().getOut().println(line);
        return 0;
    }
}
