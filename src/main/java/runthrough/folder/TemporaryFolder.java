package runthrough.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.util.Comparator;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder of our own within that for temporary files. It is locked as long as the program lives; what programs that were killed
 * have left is removed when a new one is made.
 */
public final class TemporaryFolder implements AutoCloseable {
    /** As Java calls all of ours, with a number of so many digits. Besides, they are locked, and belong to the same user. */
    private static final Pattern OURS = Pattern.compile("runthrough-[a-z-]+\\d{15,}");

    private final Path path;
    private final FolderLock lock;

    private TemporaryFolder(Path path) throws IOException {
        this.path = path;
        try {
            lock = FolderLock.of(path);
        } catch (IOException e) {
            delete(path);
            throw e;
        }
    }

    /**
     * A new one.
     *
     * @param name with which its own name begins: {@code runthrough-} and what it is for
     * @throws TemporaryFolderException where there is no room, or no permission
     */
    public static TemporaryFolder named(String name) {
        try {
            Path parent = Path.of(System.getProperty("java.io.tmpdir"));
            TemporaryFolder made = new TemporaryFolder(Files.createTempDirectory(parent, name));
            removeDead(made.path.toAbsolutePath());
            return made;
        } catch (IOException | InvalidPathException e) {
            throw new TemporaryFolderException(e);
        }
    }

    /**
     * One of ours, locked anew; what is left in it stays.
     *
     * @param path where it is, or was before somebody cleared it away
     * @throws TemporaryFolderException where there is no room, or no permission
     */
    public static TemporaryFolder again(Path path) {
        try {
            if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
                Files.createDirectory(path);
            }
            return new TemporaryFolder(path);
        } catch (IOException e) {
            throw new TemporaryFolderException(e);
        }
    }

    /** Removes dead ones beside {@code made}. */
    private static void removeDead(Path made) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(
                made.resolveSibling(""),
                path -> OURS.matcher(path.getFileName().toString()).matches())) {
            UserPrincipal us = Files.getOwner(made);
            for (Path folder : all) {
                if (FolderLock.isThere(folder)
                        && Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS).equals(us)) {
                    FolderLock.inDead(folder, () -> delete(folder));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // They stay for another one.
        }
    }

    /** Where it is. */
    public Path path() {
        return path;
    }

    /** Whether it is still there: systems clear their temporary folders. */
    public boolean isThere() {
        return Files.isDirectory(path);
    }

    /**
     * Has it stay to the end of the virtual machine, and go then with {@code files}: after all else that is done at the end, for
     * somebody may still be reading them.
     *
     * @throws CancellationException when the virtual machine is ending already; the folder is gone then
     */
    public void stayToTheEnd(Path... files) {
        try {
            Runtime.getRuntime().addShutdownHook(new Thread(this::unlock, "temporary folder"));
            path.toFile().deleteOnExit();
            lock.file().toFile().deleteOnExit();
            Stream.of(files).forEach(file -> file.toFile().deleteOnExit());
        } catch (IllegalStateException e) {
            close();
            throw new CancellationException("given up at the end of the program");
        }
    }

    /** Removes it with all that is in it. */
    @Override
    public void close() {
        unlock();
        delete(path);
    }

    private void unlock() {
        try {
            lock.close();
        } catch (IOException e) {
            // It is let go of when the program ends.
        }
    }

    /** Removes {@code place}, which need not be there, with all that is in it, as far as that can be done. */
    public static void delete(Path place) {
        if (!Files.exists(place)) {
            return;
        }
        try (Stream<Path> files = Files.walk(place)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            place.toFile().deleteOnExit();
        }
    }
}
