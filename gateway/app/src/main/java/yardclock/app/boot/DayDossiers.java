package yardclock.app.boot;

import yardclock.app.journal.JournalRefusedException;
import yardclock.app.records.paper.Language;
import yardclock.app.web.Dossiers;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;

/** Dossiers from the journal of the day that runs. */
record DayDossiers(Path journal, ZoneId zone) implements Dossiers {
    @Override
    public Optional<byte[]> make(int number, Form form) {
        try {
            DossierFile made = new DossierMaker(journal, zone).make(number);
            if (form == Form.JSON) {
                return Optional.of(made.bytes());
            }
            Language language = form == Form.ES ? Language.ES : Language.EN;
            String page = new DossierPrint(made).html(language);
            return Optional.of(page.getBytes(StandardCharsets.UTF_8));
        } catch (RefusedException e) {
            return Optional.empty();
        } catch (JournalRefusedException e) {
            throw new IllegalStateException("the journal that is being written can't be read", e);
        }
    }
}
