package yardclock.app.pins;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.plugin.linuxfs.provider.i2c.LinuxFsI2CProvider;

/**
 * A Pi4J context with one named provider of I²C, for one sensor. Nothing is detected by itself, as
 * with {@link Pins}.
 */
final class SensorBus implements AutoCloseable {
    private final Context context;
    private final String provider;

    SensorBus(Context context, String provider) {
        this.context = context;
        this.provider = provider;
    }

    /** The board's own buses, through the kernel's {@code /dev/i2c-*}. */
    static SensorBus ofThisBoard() {
        Context context =
                Pi4J.newContextBuilder()
                        .noAutoDetect()
                        .add(LinuxFsI2CProvider.newInstance())
                        .build();
        return new SensorBus(context, LinuxFsI2CProvider.ID);
    }

    I2C open(ClimateWiring wiring) {
        I2CConfig config =
                I2C.newConfigBuilder(context)
                        .id("climate-" + wiring.unit())
                        .bus(wiring.bus())
                        .device(wiring.address())
                        .provider(provider)
                        .build();
        return context.create(config);
    }

    @Override
    public void close() {
        context.shutdown();
    }
}
