package yardclock.core.heat;

/**
 * A bound that a value reached, both in tenths of the unit its kind goes with.
 *
 * @param level the level it is reason for
 */
public record HeatReason(int level, Kind kind, int valueDeci, int boundDeci) {
    /** What was measured or seen. */
    public enum Kind {
        HEAT_INDEX("heat index", "°F"),
        WBGT("WBGT", "°C"),
        WIND_CHILL("wind chill", "°F"),
        GUST_AT_CLIMBS("gust", "m/s"),
        GUST_OVER_PLATE("gust", "m/s"),
        LIGHTNING("thunder or lightning", "");

        private final String quantity;
        private final String unit;

        Kind(String quantity, String unit) {
            this.quantity = quantity;
            this.unit = unit;
        }

        String quantity() {
            return quantity;
        }

        String unit() {
            return unit;
        }
    }
}
