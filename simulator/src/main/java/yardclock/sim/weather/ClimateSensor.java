package yardclock.sim.weather;

import yardclock.sim.stage.Stage;
import yardclock.sim.units.ClimateReading;
import yardclock.sim.units.VirtualUnit;

/**
 * The climate sensor on a unit: one reading every 30 s of exam time, of an invented summer morning
 * that warms slowly and dries. Lives on the stage.
 */
public final class ClimateSensor {
    private static final long EVERY_MICROS = 30_000_000;
    private static final long HOUR_MICROS = 3_600_000_000L;
    private static final int MORNING_CENTI_CELSIUS = 2_150;
    private static final int WARMS_PER_HOUR = 110;
    private static final int MORNING_CENTI_PERCENT = 6_200;
    private static final int DRIES_PER_HOUR = 240;
    private static final int GLOBE_ABOVE_AIR = 900;
    private static final int WIND = 1_800;
    private static final int GUST = 700;

    private final Stage stage;
    private final VirtualUnit unit;

    public ClimateSensor(Stage stage, VirtualUnit unit) {
        this.stage = stage;
        this.unit = unit;
    }

    public void begin() {
        unit.read(readingAt(stage.nowMicros()));
        stage.afterMicros(EVERY_MICROS, this::begin);
    }

    static ClimateReading readingAt(long examMicros) {
        int air = MORNING_CENTI_CELSIUS + (int) (WARMS_PER_HOUR * examMicros / HOUR_MICROS);
        int humidity = MORNING_CENTI_PERCENT - (int) (DRIES_PER_HOUR * examMicros / HOUR_MICROS);
        int wind = WIND + (int) (GUST * Math.sin(examMicros / 95e6));
        return new ClimateReading(air, Math.max(2_500, humidity), air + GLOBE_ABOVE_AIR, wind);
    }
}
