package yardclock.app.boot;

import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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

    @Override
    public Integer call() throws RefusedException {
        Engine engine = new Engine();
        try (JournalReader reader = JournalReader.open(file)) {
            long entries = reader.entries(entry -> apply(engine, entry));
            ObjectNode line = Json.mapper().createObjectNode();
            line.put("entries", entries).put("digest", engine.digest());
            spec.commandLine().getOut().println(line);
            return 0;
        } catch (JournalRefusedException | RulesFailedException e) {
            throw new RefusedException(e.getMessage(), e);
        }
    }

    private static void apply(Engine engine, Entry entry) {
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
