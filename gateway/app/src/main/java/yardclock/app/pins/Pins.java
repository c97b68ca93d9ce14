package yardclock.app.pins;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalInput;
import com.pi4j.io.gpio.digital.PullResistance;
import com.pi4j.plugin.gpiod.provider.gpio.digital.GpioDDigitalInputProvider;

import yardclock.core.course.SensorPlan;

/**
 * A Pi4J context with one named provider of inputs.
 *
 * <p>Nothing is detected by itself: where a mock lies on the class path it would win.
 */
final class Pins implements AutoCloseable {
    private final Context context;
    private final String provider;

    Pins(Context context, String provider) {
        this.context = context;
        this.provider = provider;
    }

    /** The board's own lines, through the kernel's GPIO character device. */
    static Pins ofThisBoard() {
        Context context =
                Pi4J.newContextBuilder()
                        .noAutoDetect()
                        .add(GpioDDigitalInputProvider.newInstance())
                        .build();
        return new Pins(context, GpioDDigitalInputProvider.ID);
    }

    /** Opens a line; without debouncing, since Pi4J's also delays what it lets through. */
    DigitalInput open(int line, SensorPlan sensor) {
        return context.create(
                DigitalInput.newConfigBuilder(context)
                        .id("line-" + line)
                        .address(line)
                        .pull(sensor.pullUp() ? PullResistance.PULL_UP : PullResistance.OFF)
                        .debounce(0L)
                        .provider(provider)
                        .build());
    }

    @Override
    public void close() {
        context.shutdown();
    }
}
