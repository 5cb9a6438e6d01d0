package runthrough.report.write;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Says of a folder in which a report is made whether somebody is at work in it: its file is locked as long as the run lives. */
final class StagingLock implements AutoCloseable {
    private static final String NAME = ".lock";

    /** Younger ones are left alone: their run may be about to lock them. */
    private static final Duration YOUNG = Duration.ofMinutes(1);

    private final Path file;
    private final @Nullable FileChannel channel;

    private StagingLock(Path file, @Nullable FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Locks {@code folder}, where the disk knows locks; without one nobody will ever take it for dead. */
    static StagingLock of(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            channel.lock();
            return new StagingLock(file, channel);
        } catch (IOException e) {
            return new StagingLock(file, null);
        }
    }

    /** Whether the run that made {@code folder} has ended without removing it. */
    static boolean isDead(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            if (Files.getLastModifiedTime(file)
                    .toInstant()
                    .isAfter(Instant.now().minus(YOUNG))) {
                return false;
            }
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                return channel.tryLock() != null;
            }
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    /** Lets go, and takes the file away. */
    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.close();
        }
        Files.deleteIfExists(file);
    }
}
