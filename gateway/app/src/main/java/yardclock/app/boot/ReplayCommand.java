package yardclock.app.boot;

import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import yardclock.app.journal.JournalReader;
import yardclock.app.journal.JournalRefusedException;
import yardclock.app.json.Json;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;

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
        Engine engine = new Engine();
        try (JournalReader reader = JournalReader.open(file)) {
            long entries = reader.entries(entry -> apply(engine, entry));
            if (last != null && last > entries) {
                throw new RefusedException("The journal has " + entries + " entries only.");
            }
            ObjectNode line = Json.mapper().createObjectNode();
            line.put("entries", engine.lastEntry()).put("digest", engine.digest());
            spec.commandLine().getOut().println(line);
            return 0;
        } catch (JournalRefusedException | RulesFailedException e) {
            throw new RefusedException(e.getMessage(), e);
        }
    }

    private void apply(Engine engine, Entry entry) {
        if (last != null && entry.number() > last) {
            return;
        }
        try {
            engine.apply(entry);
        } catch (RuntimeException e) {
            throw new RulesFailedException(entry, e);
        }
    }

    /** Carries the entry at which the rules failed out of the reading. */
    private static final class RulesFailedException extends RuntimeException {
        private static final long serialVersionUID = 1;

        RulesFailedException(Entry entry, RuntimeException cause) {
            super(
                    "The rules of this version fail at entry " + entry.number() + ": " + cause,
                    cause);
        }
    }
}
