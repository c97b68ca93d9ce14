package yardclock.core.board;

import yardclock.core.course.Text;

/**
 * A passage that is nobody's, to be assigned or struck.
 *
 * @param sensor the sensor's name
 * @param atMicros gateway time of the edge that would stamp it
 * @param words why it is nobody's
 * @param unit with boot and seq, the edge's name
 */
public record TrayView(
        String station,
        Text sensor,
        long atMicros,
        long ageMillis,
        Text words,
        String unit,
        String boot,
        long seq) {}
