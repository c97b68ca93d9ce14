package yardclock.sim.demo;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.Head;

import java.util.concurrent.CompletableFuture;

/**
 * Watches the coordinator's page: who is where, whether everybody is done, whether the day has
 * stuck. Frames come on the stage; anybody may ask.
 */
final class DayWatch {
    private final int candidates;
    private final CompletableFuture<Void> finished = new CompletableFuture<>();
    private volatile ControlFrame newest;
    private volatile String picture = "";
    private volatile long changedNanos = System.nanoTime();
    private volatile long changedMicros;

    DayWatch(int candidates) {
        this.candidates = candidates;
    }

    void sees(ControlFrame frame) {
        newest = frame;
        String now = picture(frame);
        boolean moves = frame.head().course() == Head.CourseStatus.RUNNING;
        if (!now.equals(picture) || !moves) {
            picture = now;
            changedNanos = System.nanoTime();
            changedMicros = frame.head().gatewayMicros();
        }
        if (isOver(frame)) {
            finished.complete(null);
        }
    }

    private static String picture(ControlFrame frame) {
        StringBuilder picture = new StringBuilder();
        frame.onCourse()
                .forEach(
                        one ->
                                picture.append(one.number())
                                        .append(' ')
                                        .append(one.phase())
                                        .append(' ')
                                        .append(one.station())
                                        .append(one.splitsToRule())
                                        .append("; "));
        return picture.append(told(frame)).append(" told").toString();
    }

    private static long told(ControlFrame frame) {
        return frame.done().stream().filter(ControlFrame.DoneView::told).count();
    }

    private boolean isOver(ControlFrame frame) {
        return frame.waiting().isEmpty() && frame.onCourse().isEmpty() && told(frame) >= candidates;
    }

    /** Completes when every candidate is done and told. */
    CompletableFuture<Void> finished() {
        return finished;
    }

    /** Whether a running course has not changed for so long in both times. */
    boolean hasStuck(long realNanos, long examMicros) {
        ControlFrame frame = newest;
        return frame != null
                && System.nanoTime() - changedNanos > realNanos
                && frame.head().gatewayMicros() - changedMicros > examMicros;
    }

    /** In a few words, who is where. */
    String words() {
        ControlFrame frame = newest;
        if (frame == null) {
            return "no frame yet";
        }
        return "%d waiting, %d on the course, %d done"
                .formatted(frame.waiting().size(), frame.onCourse().size(), frame.done().size());
    }

    String details() {
        return picture;
    }
}
