package yardclock.app.boot;

import yardclock.app.journal.Excerpt;
import yardclock.app.journal.JournalRefusedException;
import yardclock.app.records.dossier.page.Contents;
import yardclock.app.records.dossier.page.DossierPage;
import yardclock.app.records.paper.Language;
import yardclock.core.course.ExamPlan;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.time.DateTimeException;
import java.time.ZoneId;

/** A dossier as a page to print, made from the very file that can be checked. */
record DossierPrint(DossierFile file) {

    String html(Language language) throws RefusedException {
        if (!file.isFurther()) {
            throw new RefusedException(
                    "A dossier of the first form says too little for a page. Make it anew from the"
                            + " journal.");
        }
        try {
            return DossierPage.of(contents(), language);
        } catch (JournalRefusedException | DateTimeException e) {
            throw new RefusedException("No page can be made of it: " + e.getMessage(), e);
        }
    }

    private Contents contents() throws JournalRefusedException, RefusedException {
        Excerpt journal = file.journal();
        long leftOut = journal.leftOut().stream().mapToLong(g -> g.to() - g.from() + 1).sum();
        return new Contents(
                file.dossier(),
                plan(journal),
                ZoneId.of(file.zone()),
                new Contents.Proof(
                        journal.headEntry(), journal.headSha256(), journal.kept().size(), leftOut));
    }

    private static ExamPlan plan(Excerpt journal) throws JournalRefusedException, RefusedException {
        return journal.entries().stream()
                .map(Entry::input)
                .filter(Input.PlanFrozen.class::isInstance)
                .map(input -> ((Input.PlanFrozen) input).plan())
                .findFirst()
                .orElseThrow(() -> new RefusedException("It holds no exam plan."));
    }
}
