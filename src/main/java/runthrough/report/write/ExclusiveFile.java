package runthrough.report.write;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.folder.Hindrance;

/**
 * A file that one run at a time reads and goes on with. An interrupt would close a channel in the middle of a line; it leaves such a file
 * alone.
 */
public final class ExclusiveFile {
    private ExclusiveFile() {}

    /**
     * Opens {@code file}, made anew, with the folders that lead to it, where it is not there.
     *
     * @param inUse what to say, behind the name of the file, when another run has it
     * @throws ReportFolderException when another run has it
     */
    public static RandomAccessFile open(Path file, String inUse) throws IOException {
        Optional<String> hindrance = Hindrance.toFile(file);
        if (hindrance.isPresent()) {
            throw new IOException(hindrance.get());
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw");
        boolean isOurs = false;
        try {
            isOurs = open.getChannel().tryLock() != null;
        } catch (OverlappingFileLockException e) {
            // Another run within this process has it.
        } finally {
            if (!isOurs) {
                close(open);
            }
        }
        if (!isOurs) {
            throw new ReportFolderException(file + " is in use: " + inUse, null);
        }
        return open;
    }

    /** Closes {@code open}, if there is one: what was written is there, whatever comes of it. */
    public static void close(@Nullable RandomAccessFile open) {
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException e) {
            // Nothing is left to be done.
        }
    }
}
