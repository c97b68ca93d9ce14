package yardclock.app.pins;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A process with a lane and a dead-man of its own, which writes a letter for every pulse. */
final class PulseProcess {
    private PulseProcess() {}

    /**
     * @param arguments the day's directory, and the file for the pulses
     */
    public static void main(String[] arguments) throws Exception {
        Path pulses = Path.of(arguments[1]);
        MockOutputs board = new MockOutputs();
        OutputsBench bench = new OutputsBench(Path.of(arguments[0]), board);
        board.onRise(OutputJob.PULSE, () -> write(pulses));
        bench.lane().lane.ask(engine -> null).join();
        Thread.currentThread().join();
    }

    private static void write(Path pulses) {
        try {
            Files.writeString(pulses, "p", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
