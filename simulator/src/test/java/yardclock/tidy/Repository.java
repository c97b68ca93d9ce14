package yardclock.tidy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The whole repository as files, found by walking up from where the test runs. Built things and a
 * developer's own folders are left out; so is {@code .git}, which is a file in a linked work tree.
 */
final class Repository {
    private static final Set<String> NOT_OURS =
            Set.of(".git", "target", "data", "node_modules", ".idea", ".vscode", ".settings");
    private static final List<String> TEXT =
            List.of(
                    "",
                    ".java",
                    ".js",
                    ".mjs",
                    ".css",
                    ".html",
                    ".md",
                    ".yaml",
                    ".yml",
                    ".json",
                    ".xml",
                    ".sh",
                    ".py",
                    ".conf",
                    ".config",
                    ".properties",
                    ".csv",
                    ".service",
                    ".txt");

    private final Path root;

    private Repository(Path root) {
        this.root = root;
    }

    static Repository here() {
        Path at = Path.of("").toAbsolutePath();
        while (at != null && !Files.isRegularFile(at.resolve("yardclock"))) {
            at = at.getParent();
        }
        if (at == null) {
            throw new IllegalStateException("no launcher above " + Path.of("").toAbsolutePath());
        }
        return new Repository(at);
    }

    /** A text file; {@code name} is its path from the root, with slashes. */
    record Source(String name, Path path, String text) {
        List<String> lines() {
            return text.lines().toList();
        }

        boolean endsWith(String... endings) {
            for (String ending : endings) {
                if (name.endsWith(ending)) {
                    return true;
                }
            }
            return false;
        }
    }

    List<Source> texts() {
        List<Source> found = new ArrayList<>();
        for (Path path : files()) {
            String file = path.getFileName().toString();
            int dot = file.lastIndexOf('.');
            if (TEXT.contains(dot <= 0 ? "" : file.substring(dot))) {
                found.add(read(path));
            }
        }
        return found;
    }

    List<Source> java() {
        return texts().stream().filter(source -> source.endsWith(".java")).toList();
    }

    Source text(String name) {
        return read(root.resolve(name));
    }

    boolean exists(String name) {
        return Files.exists(root.resolve(name).normalize());
    }

    private Source read(Path path) {
        String name = root.relativize(path).toString().replace('\\', '/');
        try {
            return new Source(name, path, Files.readString(path));
        } catch (MalformedInputException notText) {
            throw new IllegalStateException(name + " is not UTF-8", notText);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Path> files() {
        List<Path> found = new ArrayList<>();
        try {
            Files.walkFileTree(
                    root,
                    new SimpleFileVisitor<>() {
                        @Override
                        public FileVisitResult preVisitDirectory(
                                Path folder, BasicFileAttributes attributes) {
                            return NOT_OURS.contains(folder.getFileName().toString())
                                    ? FileVisitResult.SKIP_SUBTREE
                                    : FileVisitResult.CONTINUE;
                        }

                        @Override
                        public FileVisitResult visitFile(
                                Path file, BasicFileAttributes attributes) {
                            if (attributes.isRegularFile()
                                    && !NOT_OURS.contains(file.getFileName().toString())) {
                                found.add(file);
                            }
                            return FileVisitResult.CONTINUE;
                        }
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        found.sort(null);
        return found;
    }
}
