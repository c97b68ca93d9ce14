package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Timeline;
import yardclock.core.course.ExamPlan;

import java.time.ZoneId;

/**
 * What a page is written from.
 *
 * @param plan the day's, from the entries the dossier keeps
 * @param zone for times of day
 */
public record Contents(Dossier dossier, ExamPlan plan, ZoneId zone, Proof proof) {
    /**
     * What ties the dossier to the day's journal.
     *
     * @param kept how many entries go with it, whole
     * @param leftOut of how many the hash alone does
     */
    public record Proof(long headEntry, String headSha256, long kept, long leftOut) {}

    Timeline timeline() {
        return dossier.timeline();
    }
}
