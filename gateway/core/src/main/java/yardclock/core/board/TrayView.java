package yardclock.core.board;

import yardclock.core.course.Text;

import java.util.List;

/**
 * A passage that is nobody's, to be assigned or struck.
 *
 * @param sensor the sensor's name
 * @param atMicros gateway time of the edge that would stamp it
 * @param words why it is nobody's
 * @param unit with boot and seq, the edge's name
 * @param points of its station, whose mark it can make
 */
public record TrayView(
        String station,
        Text sensor,
        long atMicros,
        long ageMillis,
        Text words,
        String unit,
        String boot,
        long seq,
        List<Point> points) {
    /** A point whose mark the passage can make: start, finish or a checkpoint's id. */
    public record Point(String id, Text name) {}
}
