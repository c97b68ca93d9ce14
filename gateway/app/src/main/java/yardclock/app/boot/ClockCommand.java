package yardclock.app.boot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.recorded.Dating;
import yardclock.app.recorded.Recording;
import yardclock.app.recorded.RecordingFiles;
import yardclock.core.time.Stamp;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** Dates recorded edges by recorded exchanges, with the gateway's own clock rules. */
@Command(
        name = "clock",
        description = {
            "Dates recorded edges in gateway time by recorded clock exchanges, and writes each with"
                    + " its limits: station,station_us,estimate_us,lower_us,upper_us.",
            "The last three cells are empty where there is no bound."
        },
        mixinStandardHelpOptions = true)
final class ClockCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Option(
            names = "--exchanges",
            required = true,
            paramLabel = "F",
            description =
                    "CSV: station,gateway_sent_us,station_received_us,station_sent_us,"
                            + "gateway_received_us")
    private Path exchanges;

    @Option(
            names = "--edges",
            required = true,
            paramLabel = "F",
            description = "CSV: station,station_us,gateway_arrival_us; other columns are not read")
    private Path edges;

    @Option(
            names = "--mode",
            defaultValue = "live",
            description =
                    "live: as the edge arrived; final: with later exchanges too"
                            + " (default: ${DEFAULT-VALUE})")
    private Dating.Mode mode;

    @Option(names = "--output", paramLabel = "F", description = "write here, not to the terminal")
    private Path output;

    @Override
    public Integer call() throws RefusedException {
        try {
            Recording recording = RecordingFiles.read(exchanges, edges);
            List<Optional<Stamp>> stamps = new Dating(recording, mode).stamps();
            if (output == null) {
                write(recording, stamps, spec.commandLine().getOut());
                return 0;
            }
            try (PrintWriter file =
                    new PrintWriter(Files.newBufferedWriter(output, StandardCharsets.UTF_8))) {
                write(recording, stamps, file);
            }
            return 0;
        } catch (RecordingFiles.UnreadableException e) {
            throw new RefusedException(e.getMessage(), e);
        } catch (IOException e) {
            throw new RefusedException(output + " can't be written: " + e.getMessage(), e);
        }
    }

    private static void write(Recording recording, List<Optional<Stamp>> stamps, PrintWriter to) {
        to.print("station,station_us,estimate_us,lower_us,upper_us\n");
        for (int i = 0; i < stamps.size(); i++) {
            Recording.EdgeRow edge = recording.edges().get(i);
            String limits =
                    stamps.get(i)
                            .map(s -> s.micros() + "," + s.lowerMicros() + "," + s.upperMicros())
                            .orElse(",,");
            to.print(edge.station() + "," + edge.stationMicros() + "," + limits + "\n");
        }
        to.flush();
    }
}
