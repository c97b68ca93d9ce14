package yardclock.app.boot;

import yardclock.app.records.paper.Language;

import java.nio.file.Path;
import java.time.ZoneOffset;

/** A number's page from a journal, for tests that look at it in a browser. */
public final class DossierPages {
    private DossierPages() {}

    public static String html(Path journal, int number, Language language) throws Exception {
        DossierFile made = new DossierMaker(journal, ZoneOffset.UTC).make(number);
        return new DossierPrint(made).html(language);
    }
}
