package runthrough.report.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * Of the runs that put files into the same folder, one has its turn. It holds a locked file, which it removes; the lock of a run
 * that was killed goes with it.
 */
final class Turn implements AutoCloseable {
    private static final int LONGEST_MS = 30_000;
    private static final int PAUSE_MS = 5;

    /** Behind all that is written to the file: on some systems nobody else can read what is locked. */
    private static final long PLACE_OF_LOCK = Long.MAX_VALUE - 1;

    private final Path file;
    private final FileChannel channel;

    private Turn(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Waits for the other runs that have their turn by {@code file}.
     *
     * @param number from 1, that no other of these runs has
     */
    static Turn of(Path file, int number) throws IOException {
        for (int waited = 0; waited < LONGEST_MS; waited += PAUSE_MS) {
            if (isNoFile(file)) {
                throw new FileSystemException(file.toString(), null, "is no file that a run has left; remove it");
            }
            FileChannel channel = FileChannel.open(
                    file,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    // What a link leads to is somebody's file, and would be written to.
                    LinkOption.NOFOLLOW_LINKS);
            boolean isOurs = false;
            try {
                isOurs = isOurs(channel, file, number);
            } finally {
                if (!isOurs) {
                    channel.close();
                }
            }
            if (isOurs) {
                return new Turn(file, channel);
            }
            pause();
        }
        throw new FileSystemException(file.toString(), null, "another run has been putting its report there for long");
    }

    /**
     * Whether we have locked the file of that name: the one that we opened may have been removed by its run meanwhile. Its size says
     * so, for it has as many bytes as the number of the run whose turn it is. Were it opened once more to be read, closing it would let
     * go of our lock, on the systems that follow POSIX.
     *
     * @throws IOException when the disk takes not even that
     */
    private static boolean isOurs(FileChannel channel, Path file, int number) throws IOException {
        try {
            if (channel.tryLock(PLACE_OF_LOCK, 1, false) == null) {
                return false;
            }
        } catch (OverlappingFileLockException e) {
            // Another run within this process.
            return false;
        } catch (IOException e) {
            // A disk that knows no locks: everybody has a turn, but for who is being given up.
            return !Thread.currentThread().isInterrupted();
        }
        channel.truncate(0).write(ByteBuffer.allocate(number));
        try {
            return Files.size(file) == number;
        } catch (IOException e) {
            // Removed just now.
            return false;
        }
    }

    /** Whether something has that name, at one look, that is no file; a file may be removed at any time. */
    private static boolean isNoFile(Path file) {
        try {
            return !Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                    .isRegularFile();
        } catch (IOException e) {
            // Nothing has it yet.
            return false;
        }
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while another run put its report there", e);
        }
    }

    /** The end of the turn. What cannot be removed is used and removed by another run. */
    @Override
    public void close() {
        try (FileChannel held = channel) {
            if (held.isOpen()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // The end of the program lets go of it.
        }
    }
}
