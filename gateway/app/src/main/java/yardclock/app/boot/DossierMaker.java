package yardclock.app.boot;

import yardclock.app.journal.Excerpt;
import yardclock.app.journal.JournalReader;
import yardclock.app.journal.JournalRefusedException;
import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Inclusion;
import yardclock.app.records.dossier.Play;
import yardclock.app.records.dossier.Timeline;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

/**
 * Makes dossiers from a journal file, also from that of a running gateway. Owns a connection of its
 * own for as long as one takes. Any thread.
 *
 * <p>The journal is played whole first, to know what belongs to the number. What is kept is then
 * played alone. It is kept as little as gives the same timeline: clocks and health are kept within
 * a margin of the attempt, and a wider one is tried only where something came out otherwise.
 */
record DossierMaker(Path journal, ZoneId zone) {
    private static final long MINUTE = 60_000_000;

    /** Final stamps take the exchanges of 150 s on either side; four times that is ample. */
    private static final List<Long> MARGINS_MICROS =
            List.of(10 * MINUTE, 60 * MINUTE, Long.MAX_VALUE / 4);

    DossierFile make(int number) throws JournalRefusedException, RefusedException {
        Play whole = new Play(number);
        try (JournalReader reader = JournalReader.open(journal)) {
            reader.entries(whole::take);
            Timeline all = whole.timeline();
            if (all.standing() == null) {
                throw new RefusedException("The journal knows no number " + number + ".");
            }
            DossierFile made = null;
            for (long margin : MARGINS_MICROS) {
                made = part(number, whole, reader.excerpt(Inclusion.of(whole, margin)), all);
                if (made.dossier().differences().isEmpty()) {
                    break;
                }
            }
            return made;
        }
    }

    private DossierFile part(int number, Play whole, Excerpt excerpt, Timeline all)
            throws JournalRefusedException {
        Timeline shown = Play.ofPart(excerpt.entries(), number);
        Dossier dossier = new Dossier(shown, Dossier.differences(all, shown), whole.alarms());
        return DossierFile.of(number, zone.getId(), dossier, excerpt);
    }
}
