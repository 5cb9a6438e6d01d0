package runthrough.folder;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;

/** Says of a folder whether somebody is at work in it: a file in it is locked as long as the run lives. */
public final class FolderLock implements AutoCloseable {
    private static final String NAME = ".lock";

    /** Younger ones are left alone: their run may be about to lock them. */
    private static final Duration YOUNG = Duration.ofMinutes(1);

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Locks {@code folder}; where the disk knows no locks, nobody will ever take it for dead. */
    public static FolderLock of(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            channel.lock();
        } catch (IOException e) {
            // As said.
        }
        return new FolderLock(file, channel);
    }

    /** Whether there is a lock: it is the first file to be made, and the first to be removed. */
    public static boolean isThere(Path folder) {
        return Files.exists(folder.resolve(NAME));
    }

    /** Whether the run that made {@code folder} has ended without removing it, maybe before it locked its file. */
    public static boolean isDead(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            boolean isThere = isThere(folder);
            if (Files.getLastModifiedTime(isThere ? file : folder)
                    .toInstant()
                    .isAfter(Instant.now().minus(YOUNG))) {
                return false;
            }
            if (!isThere) {
                return true;
            }
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                return channel.tryLock() != null;
            }
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    /** The file that is locked. */
    Path file() {
        return file;
    }

    /** Lets go, and takes the file away. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }
}
