package yardclock.app.pins;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalState;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalInput;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalInputProvider;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalOutput;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalOutputProvider;

/** A board's lines on Pi4J's mock providers. */
final class MockOutputs implements AutoCloseable {
    private final Context context =
            Pi4J.newContextBuilder()
                    .noAutoDetect()
                    .add(
                            MockDigitalInputProvider.newInstance(),
                            MockDigitalOutputProvider.newInstance())
                    .build();
    private final BoardPins pins =
            new BoardPins(
                    () ->
                            new Pins(
                                    context,
                                    MockDigitalInputProvider.ID,
                                    MockDigitalOutputProvider.ID));

    BoardPins pins() {
        return pins;
    }

    boolean isOn(OutputJob job) {
        return output(job).isHigh();
    }

    void onRise(OutputJob job, Runnable then) {
        output(job)
                .addListener(
                        change -> {
                            if (change.state() == DigitalState.HIGH) {
                                then.run();
                            }
                        });
    }

    void input(int line, DigitalState state) {
        context.registry().get("line-" + line, MockDigitalInput.class).mockState(state);
    }

    private MockDigitalOutput output(OutputJob job) {
        return context.registry().get(job.word(), MockDigitalOutput.class);
    }

    @Override
    public void close() {
        pins.close();
    }
}
