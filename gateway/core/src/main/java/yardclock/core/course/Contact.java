package yardclock.core.course;

/** A sensor and the state that counts: 1 closed, blocked or pressed; 0 open, clear or released. */
public record Contact(SensorRef sensor, int state) {}
