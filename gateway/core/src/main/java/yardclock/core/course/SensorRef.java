package yardclock.core.course;

/**
 * One sensor of one field unit: 1–8 are inputs, 9–12 the outputs, whose own edges come back when
 * the unit has shown something.
 */
public record SensorRef(String unit, int sensor) implements Comparable<SensorRef> {
    public static final int FIRST_OUTPUT = 9;
    public static final int LAST_OUTPUT = 12;

    public boolean isOutput() {
        return sensor >= FIRST_OUTPUT;
    }

    @Override
    public int compareTo(SensorRef other) {
        int byUnit = unit.compareTo(other.unit);
        return byUnit != 0 ? byUnit : Integer.compare(sensor, other.sensor);
    }

    @Override
    public String toString() {
        return unit + "/" + sensor;
    }
}
