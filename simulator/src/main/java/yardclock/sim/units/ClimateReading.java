package yardclock.sim.units;

/** What a climate sensor on a unit reads: air, humidity, globe and wind. */
public record ClimateReading(
        int centiCelsius, int centiPercent, int globeCentiCelsius, int windMillimetresPerSecond) {}
