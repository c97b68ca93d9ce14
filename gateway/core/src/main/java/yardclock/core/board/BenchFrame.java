package yardclock.core.board;

import yardclock.core.course.Text;
import yardclock.core.health.ClockTrouble;
import yardclock.core.run.SecondClock;
import yardclock.core.time.ClockStatus;

import java.util.List;

/**
 * The timing technician's picture: every field unit, sensor and the newest edges.
 *
 * @param pointsByHand taps beside the automatic marks over the day, by start and finish
 * @param proctorsByHand the same by proctor
 * @param triggers what judges the edges now, in the order of the course; without those that no
 *     sensor makes
 */
public record BenchFrame(
        Head head,
        List<UnitView> units,
        List<EdgeView> edges,
        List<String> alarms,
        CalibrationView calibrations,
        List<SecondClock> pointsByHand,
        List<SecondClock> proctorsByHand,
        List<TriggerView> triggers,
        ProofView proof) {

    /** The same with other alarms. */
    public BenchFrame withAlarms(List<String> others) {
        return new BenchFrame(
                head,
                units,
                edges,
                List.copyOf(others),
                calibrations,
                pointsByHand,
                proctorsByHand,
                triggers,
                proof);
    }

    /**
     * One field unit.
     *
     * @param status never-seen, up, silent or off-line
     * @param words the status in a plain sentence
     * @param contiguous highest sequence number up to which nothing is missing, −1 for none
     * @param gaps missing ranges as text
     * @param waiting edges that have no place in time yet
     * @param clockTroubles what is to be known of its clock, the most pressing first
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
            AnswersView answers,
            long waiting,
            List<ClockTrouble> clockTroubles,
            List<SensorView> sensors) {}

    /**
     * A unit's answers to clock exchanges.
     *
     * @param asked how many of the newest questions are looked at, 0 while nothing is known
     * @param lost how many of those were not answered
     * @param again answers to a question that was answered already
     * @param late answers that took too long
     * @param unknown answers to questions nobody asked
     * @param otherBoot answers from another boot than the unit's present one
     */
    public record AnswersView(
            long asked, long lost, long again, long late, long unknown, long otherBoot) {}

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
