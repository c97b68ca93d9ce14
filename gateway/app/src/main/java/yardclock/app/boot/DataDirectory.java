package yardclock.app.boot;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** The directory that holds one day. A new one can be entered by its owner only. */
final class DataDirectory {
    private DataDirectory() {}

    static Path prepare(Path directory) throws RefusedException {
        Path absolute = directory.toAbsolutePath().normalize();
        try {
            if (!Files.isDirectory(absolute)) {
                Files.createDirectories(absolute.getParent());
                Files.createDirectory(
                        absolute,
                        PosixFilePermissions.asFileAttribute(
                                PosixFilePermissions.fromString("rwx------")));
            }
        } catch (IOException e) {
            throw new RefusedException(
                    "The directory " + absolute + " can't be made: " + e.getMessage(), e);
        }
        if (!Files.isWritable(absolute)) {
            throw new RefusedException("The directory " + absolute + " can't be written to.");
        }
        return absolute;
    }
}
