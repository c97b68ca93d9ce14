package yardclock.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The dashboard's own files by their name, whether they lie in a folder yet or in the jar. */
final class Dashboard {
    private Dashboard() {}

    static Map<String, String> modules() {
        return files(".js");
    }

    static Map<String, String> files(String ending) {
        try {
            URI index =
                    Dashboard.class.getClassLoader().getResource("dashboard/index.html").toURI();
            if (!index.getScheme().equals("jar")) {
                return read(Path.of(index).getParent(), ending);
            }
            try (FileSystem jar = FileSystems.newFileSystem(index, Map.of())) {
                return read(jar.getPath("dashboard"), ending);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, String> read(Path folder, String ending) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(one -> one.toString().endsWith(ending)).toList()) {
                files.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return files;
    }
}
