package runthrough.folder;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.Optional;

/**
 * Says of a folder whether somebody is at work in it: a file in it is locked as long as the run lives. The file has the name of its
 * program, for a program that opens and closes what it has locked itself lets go of it, on the systems that follow POSIX.
 */
public final class FolderLock implements AutoCloseable {
    private static final String NAMES = ".lock";

    /** No other program that lives, or has lived, has this one, in whatever container. */
    private static final String NAME =
            NAMES + "-" + ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());

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
        // Of this program, when it locks its folder anew.
        Files.deleteIfExists(file);
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
        return fileIn(folder).isPresent();
    }

    private static Optional<Path> fileIn(Path folder) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, NAMES + "*")) {
            Iterator<Path> found = files.iterator();
            return found.hasNext() ? Optional.of(found.next()) : Optional.empty();
        } catch (IOException | DirectoryIteratorException e) {
            return Optional.empty();
        }
    }

    /** Whether the run that made {@code folder} has ended without removing it, maybe before it locked its file. */
    public static boolean isDead(Path folder) {
        Optional<Path> file = fileIn(folder);
        try {
            if (isYoung(file.orElse(folder)) || file.equals(Optional.of(folder.resolve(NAME)))) {
                return false;
            }
            return file.isEmpty() || isLetGo(file.get());
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isYoung(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant().isAfter(Instant.now().minus(YOUNG));
    }

    private static boolean isLetGo(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            return channel.tryLock() != null;
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
