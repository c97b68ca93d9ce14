package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;
import yardclock.app.recorded.RecordingFiles;
import yardclock.app.recorded.RecordingFiles.UnreadableException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Recorded runs in a folder: {@code NAME-exchanges.csv} and {@code NAME-events.csv} with truth. */
public final class RecordedHours {
    private static final String EXCHANGES = "-exchanges.csv";
    private static final String TRUTH = "true_gateway_us";

    private RecordedHours() {}

    /** The names of the runs in the folder, in order; none when there is no such folder. */
    public static List<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(EXCHANGES))
                    .map(name -> name.substring(0, name.length() - EXCHANGES.length()))
                    .sorted()
                    .toList();
        }
    }

    public static Judgeable read(Path folder, String name) throws IOException, UnreadableException {
        Path events = folder.resolve(name + "-events.csv");
        Recording recording = RecordingFiles.read(folder.resolve(name + EXCHANGES), events);
        List<String> lines =
                Files.readAllLines(events).stream()
                        .filter(line -> !line.startsWith("#") && !line.isBlank())
                        .toList();
        int column = List.of(lines.get(0).strip().split(",", -1)).indexOf(TRUTH);
        List<Long> truth =
                lines.stream()
                        .skip(1)
                        .map(line -> Long.parseLong(line.strip().split(",", -1)[column]))
                        .toList();
        return new Judgeable(recording, truth);
    }
}
