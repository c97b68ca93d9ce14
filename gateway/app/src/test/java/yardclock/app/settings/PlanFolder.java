package yardclock.app.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The plan files under the test resources, one for each mistake. */
final class PlanFolder {
    private static final Path PLANS = Path.of("src/test/resources/plans");

    private PlanFolder() {}

    static Stream<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(PLANS.resolve(folder))) {
            return files.sorted().toList().stream();
        }
    }

    /** What the file's first lines say it is refused for: {@code line N, key}. */
    static List<String> announced(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> line.startsWith("# refused: "))
                .map(line -> line.substring("# refused: ".length()))
                .toList();
    }

    static List<String> found(PlanProblems problems) {
        return problems.list().stream()
                .map(p -> "line " + p.line() + (p.key().isEmpty() ? "" : ", " + p.key()))
                .toList();
    }
}
