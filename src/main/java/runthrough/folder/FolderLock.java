package runthrough.folder;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Says of a folder whether somebody is at work in it: a file in it is locked as long as the run lives. The file has the name of its
 * program, for a program that opens and closes what it has locked itself lets go of it, on the systems that follow POSIX.
 */
public final class FolderLock implements AutoCloseable {
    private static final Pattern NAMES = Pattern.compile("\\.lock(-\\d+-\\p{XDigit}+)?");

    /** No other program that lives, or has lived, has this one, in whatever container. */
    private static final String NAME =
            ".lock-" + ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());

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
        if (!isFolder(folder)) {
            return Optional.empty();
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, FolderLock::isLock)) {
            Iterator<Path> found = files.iterator();
            return found.hasNext() ? Optional.of(found.next()) : Optional.empty();
        } catch (IOException | DirectoryIteratorException e) {
            return Optional.empty();
        }
    }

    /** A link leads to what is somebody else's, and a pipe holds up who opens it. */
    private static boolean isFolder(Path path) {
        return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether {@code file} is a lock; a pipe of that name would hold up who opens it. */
    private static boolean isLock(Path file) {
        return NAMES.matcher(file.getFileName().toString()).matches()
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** What is done in a folder. */
    public interface Work {
        void run() throws IOException;
    }

    /**
     * Does {@code work} in {@code folder} if the run that made it has ended without removing it, maybe before it locked its file. Its lock is
     * taken over meanwhile: who finds the same folder at the same instant leaves it alone, and so what is made in its place.
     */
    public static void inDead(Path folder, Work work) throws IOException {
        Optional<FolderLock> lock = ofDead(folder);
        if (lock.isPresent()) {
            try {
                work.run();
            } finally {
                lock.get().close();
            }
        }
    }

    private static Optional<FolderLock> ofDead(Path folder) {
        Optional<Path> file = fileIn(folder);
        try {
            if (!isFolder(folder) || isYoung(file.orElse(folder)) || file.equals(Optional.of(folder.resolve(NAME)))) {
                return Optional.empty();
            }
            return file.isPresent() ? takenOver(file.get()) : Optional.of(of(folder));
        } catch (IOException e) {
            // It went meanwhile, or is somebody else's.
            return Optional.empty();
        }
    }

    private static boolean isYoung(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant().isAfter(Instant.now().minus(YOUNG));
    }

    private static Optional<FolderLock> takenOver(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        boolean isOurs = false;
        try {
            // What another has just removed can be locked, too.
            isOurs = channel.tryLock() != null && Files.exists(file);
        } catch (OverlappingFileLockException e) {
            // Another run within this process has it.
        } finally {
            if (!isOurs) {
                channel.close();
            }
        }
        return isOurs ? Optional.of(new FolderLock(file, channel)) : Optional.empty();
    }

    /** The file that is locked. */
    Path file() {
        return file;
    }

    /** Takes the file away, and then lets go: nobody finds it free. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        }
    }
}
