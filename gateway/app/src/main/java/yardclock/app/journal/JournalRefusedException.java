package yardclock.app.journal;

/**
 * A journal that can't be opened or trusted, with one plain sentence for the operator: locked by
 * another gateway, chain broken, written by a newer version, unreadable.
 */
public final class JournalRefusedException extends Exception {
    private static final long serialVersionUID = 1;

    JournalRefusedException(String words) {
        super(words);
    }

    JournalRefusedException(String words, Throwable cause) {
        super(words, cause);
    }
}
