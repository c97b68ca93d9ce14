package yardclock.app.pins;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalInput;
import com.pi4j.io.gpio.digital.DigitalOutput;
import com.pi4j.io.gpio.digital.DigitalState;
import com.pi4j.io.gpio.digital.PullResistance;
import com.pi4j.plugin.gpiod.provider.gpio.digital.GpioDDigitalInputProvider;
import com.pi4j.plugin.gpiod.provider.gpio.digital.GpioDDigitalOutputProvider;

import yardclock.core.course.SensorPlan;

/**
 * A Pi4J context with one named provider of inputs and one of outputs.
 *
 * <p>Nothing is detected by itself: where a mock lies on the class path it would win.
 */
final class Pins implements AutoCloseable {
    private final Context context;
    private final String inputs;
    private final String outputs;

    Pins(Context context, String inputs, String outputs) {
        this.context = context;
        this.inputs = inputs;
        this.outputs = outputs;
    }

    /** The board's own lines, through the kernel's GPIO character device. */
    static Pins ofThisBoard() {
        Context context =
                Pi4J.newContextBuilder()
                        .noAutoDetect()
                        .add(
                                GpioDDigitalInputProvider.newInstance(),
                                GpioDDigitalOutputProvider.newInstance())
                        .build();
        return new Pins(context, GpioDDigitalInputProvider.ID, GpioDDigitalOutputProvider.ID);
    }

    /** Opens a line; without debouncing, since Pi4J's also delays what it lets through. */
    DigitalInput open(int line, SensorPlan sensor) {
        return context.create(
                DigitalInput.newConfigBuilder(context)
                        .id("line-" + line)
                        .address(line)
                        .pull(sensor.pullUp() ? PullResistance.PULL_UP : PullResistance.OFF)
                        .debounce(0L)
                        .provider(inputs)
                        .build());
    }

    /** Opens a line that has no power before and after. */
    DigitalOutput openOutput(int line, OutputJob job) {
        return context.create(
                DigitalOutput.newConfigBuilder(context)
                        .id(job.word())
                        .address(line)
                        .initial(DigitalState.LOW)
                        .shutdown(DigitalState.LOW)
                        .provider(outputs)
                        .build());
    }

    @Override
    public void close() {
        context.shutdown();
    }
}
