package yardclock.core.ruling;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.watch.HeatWatch;

/** Carries out what people tell the heat watch. */
final class HeatActs {
    private HeatActs() {}

    static void carryOut(Act act, Devices.Holder who, HeatWatch heat, long nowMicros) {
        switch (act.kind()) {
            case ACKNOWLEDGE_HEAT -> heat.acknowledge(who.person(), nowMicros);
            case HAND_READING ->
                    heat.take(
                            reading((Act.HandReading) act, who.device(), who.person(), nowMicros));
            case LIGHTNING_SEEN -> heat.flash(nowMicros);
            case GUST_READ -> heat.gust(((Act.GustRead) act).millimetresPerSecond(), nowMicros);
            default -> throw new IllegalArgumentException(act.kind().word());
        }
    }

    /** Without sunlight among its values; so nobody asks where the sun stood. */
    static HeatReading reading(Act.HandReading act, String device, String person, long nowMicros) {
        return new HeatReading(
                new HeatReading.From(device, person, act.instrument()),
                nowMicros,
                nowMicros,
                0,
                act.centiCelsius(),
                act.centiPercent(),
                act.globeCentiCelsius(),
                null,
                null,
                null);
    }
}
