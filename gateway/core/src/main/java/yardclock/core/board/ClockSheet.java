package yardclock.core.board;

import yardclock.core.time.ClockTrace;

/**
 * One field unit's clock as the technician's page draws it, asked for when the unit is looked at
 * and not sent with each frame.
 *
 * @param frame the number of the newest journal entry this picture includes
 * @param gatewayMicros gateway time of the picture; ages count back from it
 * @param boot the boot the unit reported last, or empty
 */
public record ClockSheet(
        long frame, long gatewayMicros, String unit, String boot, ClockTrace trace) {}
