package yardclock.core.board;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Station;
import yardclock.core.course.Text;

/** What the points of a station are called. */
final class Points {
    static final Text START = new Text("Start", "Salida");
    static final Text FINISH = new Text("Finish", "Meta");

    private Points() {}

    /**
     * @param point start, finish or a checkpoint's id
     */
    static Text name(Station station, String point) {
        return switch (point) {
            case "start" -> START;
            case "finish" -> FINISH;
            default -> station.checkpoint(point).map(Checkpoint::name).orElseThrow();
        };
    }
}
