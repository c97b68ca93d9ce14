package yardclock.app.web;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** As what a dossier is handed out. */
public enum DossierForm {
    /** The file that can be checked without the journal. */
    JSON("application/json"),
    /** A page to print, in English. */
    EN("text/html; charset=utf-8"),
    /** A page to print, in Spanish. */
    ES("text/html; charset=utf-8");

    private final String contentType;

    DossierForm(String contentType) {
        this.contentType = contentType;
    }

    /** The form of this word in an address; none is asked for where there is no word. */
    static Optional<DossierForm> of(String word) {
        return word == null
                ? Optional.of(JSON)
                : Arrays.stream(values()).filter(form -> form.word().equals(word)).findFirst();
    }

    /** What stands for it in an address; of a page, also its language. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    String contentType() {
        return contentType;
    }
}
