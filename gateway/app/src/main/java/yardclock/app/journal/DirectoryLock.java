package yardclock.app.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * One gateway a data directory. The operating system drops the lock when the process ends, however
 * it ends, so a stale file refuses nobody.
 */
final class DirectoryLock implements AutoCloseable {
    private final FileChannel channel;

    private DirectoryLock(FileChannel channel) {
        this.channel = channel;
    }

    static DirectoryLock take(Path directory) throws JournalRefusedException {
        FileChannel channel = null;
        try {
            channel =
                    FileChannel.open(
                            directory.resolve("gateway.lock"),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
            if (isLocked(channel)) {
                return new DirectoryLock(channel);
            }
            channel.close();
        } catch (IOException e) {
            throw new JournalRefusedException(
                    "The directory " + directory + " can't be used: " + e.getMessage(), e);
        }
        throw new JournalRefusedException(
                "Another gateway runs on "
                        + directory
                        + ". Stop it first, or choose another --data directory.");
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
