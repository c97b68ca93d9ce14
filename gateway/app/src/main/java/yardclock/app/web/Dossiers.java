package yardclock.app.web;

import java.util.Optional;

/**
 * Makes dossiers of the day that runs. Each takes a reading of the whole journal of its own, so it
 * may take seconds and keeps nobody else waiting. Any thread.
 */
public interface Dossiers {
    /** As what a dossier is handed out. */
    enum Form {
        /** The file that can be checked without the journal. */
        JSON,
        /** A page to print, in English. */
        EN,
        /** A page to print, in Spanish. */
        ES
    }

    /** Empty when the journal knows no such number. */
    Optional<byte[]> make(int number, Form form);
}
