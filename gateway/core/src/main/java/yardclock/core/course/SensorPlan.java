package yardclock.core.course;

/**
 * One sensor as wired.
 *
 * @param number 1–8 for inputs, 9–12 for outputs
 * @param restState the state at rest: 0 open or clear, 1 closed or blocked
 * @param inverted whether the unit must invert the pin so that 1 means closed or blocked
 * @param pullUp whether the pin needs its pull-up
 * @param responseMicros how late the sensor answers, at most; widens each of its stamps
 */
public record SensorPlan(
        int number,
        SensorKind kind,
        Text name,
        int restState,
        boolean inverted,
        boolean pullUp,
        long responseMicros) {}
