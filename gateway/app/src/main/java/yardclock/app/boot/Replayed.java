package yardclock.app.boot;

import yardclock.app.journal.JournalReader;
import yardclock.app.journal.JournalRefusedException;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;

import java.nio.file.Path;

/**
 * A state derived again from a journal, whose chain is checked on the way.
 *
 * @param entries how many the journal has
 */
record Replayed(Engine engine, long entries) {
    /**
     * The state after so many entries, or after all where there are fewer.
     *
     * @throws RefusedException when the journal can't be trusted, or these rules fail on it
     */
    static Replayed of(Path file, long last) throws RefusedException {
        Engine engine = new Engine();
        try (JournalReader reader = JournalReader.open(file)) {
            return new Replayed(engine, reader.entries(entry -> apply(engine, entry, last)));
        } catch (JournalRefusedException | RulesFailedException e) {
            throw new RefusedException(e.getMessage(), e);
        }
    }

    private static void apply(Engine engine, Entry entry, long last) {
        if (entry.number() > last) {
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
