package yardclock.core.trouble;

import yardclock.core.course.SensorRef;
import yardclock.core.course.Text;

/**
 * One sensor's trouble at one station, as people see it.
 *
 * @param sinceMicros gateway time since when the sensor is so
 * @param byHand who goes on by hand and why; empty while nobody said so and the station is held
 */
public record SensorTrouble(
        String station,
        SensorRef sensor,
        Text name,
        Trouble trouble,
        long sinceMicros,
        String byHand) {
    /** Whether it still keeps the station out of releases. */
    public boolean holds() {
        return byHand.isEmpty();
    }

    /** One plain sentence naming the sensor and what is wrong with it. */
    public String words() {
        return name.en() + " (" + sensor + ") " + trouble.words() + ".";
    }
}
