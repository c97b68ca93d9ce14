package yardclock.app.stations;

/** The limits of the field-unit contract, with the reason for each number. */
final class UnitLimits {
    /** The contract's message size: 32 edges of the longest form are about 3.3 KiB. */
    static final int MESSAGE_BYTES = 4096;

    /** What fits into a message; a unit that empties its buffer sends several. */
    static final int EDGES = 32;

    /** Integers above this lose digits in clients that hold numbers as doubles. */
    static final long WHOLE_MAX = (1L << 53) - 1;

    /** Ten years in microseconds: a tick beyond it is a broken counter, not an uptime. */
    static final long TICK_MAX = 315_576_000_000_000L;

    /** Sensors 1–8 and the outputs' own edges 9–12. */
    static final int SENSOR_MAX = 12;

    /** Input sensors a unit reports the state of. */
    static final int SENSORS = 8;

    /** A vehicle battery under charge stays well below. */
    static final int BATTERY_MILLIVOLTS_MAX = 60_000;

    static final int RSSI_DBM_MIN = -150;
    static final int RSSI_DBM_MAX = 20;

    /** Four hours at one edge a second are 14,400; a larger store is welcome. */
    static final int BUFFER_MAX = 1_000_000;

    /** One terabyte: more free memory than any board. */
    static final long MEMORY_MAX = 1L << 40;

    static final int CONTRACT_MAX = 1_000;
    static final int FIRMWARE_CHARS = 40;
    static final int ACCESS_POINT_CHARS = 17;
    static final int REFUSED_CHARS = 200;

    /** Below and above, no yard is open and no sensor reads: a broken reading. */
    static final int AIR_CENTI_MIN = -5_000;

    static final int AIR_CENTI_MAX = 7_000;
    static final int GLOBE_CENTI_MAX = 10_000;
    static final int HUMIDITY_CENTI_MAX = 10_000;
    static final int WIND_MILLIMETRES_MAX = 100_000;

    /** The sun gives less than 1,400 outside the air; reflections add to it at the sensor. */
    static final int SOLAR_WATTS_MAX = 2_000;

    private UnitLimits() {}
}
