package yardclock.app.boot;

import yardclock.app.metrics.Meters;
import yardclock.app.stations.RejectionLog;
import yardclock.app.stations.RejectionReason;

import java.util.ArrayList;
import java.util.List;

/** Makes the messages that were turned away visible: counted in the metrics, said on the bench. */
record RejectedMessages(RejectionLog log) {
    /** What the bench shows of them; the counts keep the rest. */
    private static final int SHOWN = 5;

    void countIn(Meters meters) {
        for (RejectionReason reason : RejectionReason.values()) {
            meters.messagesRejected(reason.code(), log, counted -> counted.count(reason));
        }
    }

    /** The newest refusals, newest first, after one sentence that counts all of them. */
    List<String> sentences() {
        List<RejectionLog.Line> newest = log.newest();
        if (newest.isEmpty()) {
            return List.of();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add("Messages of field units turned away since the start: " + log.total() + ".");
        newest.stream()
                .limit(SHOWN)
                .forEach(line -> sentences.add(line.topic() + ": " + line.words()));
        return sentences;
    }
}
