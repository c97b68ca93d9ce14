package yardclock.core.board;

import yardclock.core.course.Text;
import yardclock.core.time.ClockStatus;

import java.util.List;

/** The timing technician's picture: every field unit, sensor and the newest edges. */
public record BenchFrame(
        Head head, List<UnitView> units, List<EdgeView> edges, List<String> alarms) {

    /**
     * One field unit.
     *
     * @param status never-seen, up, silent or off-line
     * @param words the status in a plain sentence
     * @param contiguous highest sequence number up to which nothing is missing, −1 for none
     * @param gaps missing ranges as text
     */
    public record UnitView(
            String id,
            Text place,
            String status,
            String words,
            long sinceMicros,
            String boot,
            long nextSeq,
            long contiguous,
            List<String> gaps,
            long edges,
            long duplicates,
            long conflicts,
            long refused,
            int batteryMillivolts,
            int rssiDbm,
            int bufferFill,
            String firmware,
            ClockStatus clock,
            List<SensorView> sensors) {}

    /** One sensor: its present state, −1 while unknown, and what it should be at rest. */
    public record SensorView(
            int number, String kind, Text name, int state, int restState, long lastEdgeMicros) {}

    /**
     * One of the newest edges, newest first.
     *
     * @param micros where it lies in gateway time, −1 while there is no bound
     * @param widthMicros the full width of its interval, −1 while there is none
     */
    public record EdgeView(
            String unit, long seq, int sensor, int state, long micros, long widthMicros) {}
}
