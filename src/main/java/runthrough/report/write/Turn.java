package runthrough.report.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

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
     * @param name that no other of these runs has
     */
    static Turn of(Path file, String name) throws IOException {
        for (int waited = 0; waited < LONGEST_MS; waited += PAUSE_MS) {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (isOurs(channel, file, name)) {
                return new Turn(file, channel);
            }
            channel.close();
            pause();
        }
        throw new FileSystemException(file.toString(), null, "another run has been putting its report there for long");
    }

    /** Whether we have locked the file of that name: the one that we opened may have been removed by its run meanwhile. */
    private static boolean isOurs(FileChannel channel, Path file, String name) {
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
        byte[] mark = name.getBytes(StandardCharsets.UTF_8);
        try {
            channel.truncate(0).write(ByteBuffer.wrap(mark));
            return Arrays.equals(Files.readAllBytes(file), mark);
        } catch (IOException e) {
            // Removed just now; or the disk has failed, which the next try will show.
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
