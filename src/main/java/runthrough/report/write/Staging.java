package runthrough.report.write;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder beside another, in which files are made before they are moved there. */
public final class Staging {
    private static final int TRIES = 1000;

    private final Path path;
    private final StagingLock lock;
    private final List<Path> made;

    private Staging(Path path, List<Path> made) {
        this.path = path;
        this.lock = StagingLock.of(path);
        this.made = made;
    }

    /**
     * A new folder on the same disk as {@code folder}, which is absolute; parents that are missing are made. What runs for the same
     * folder have left that were killed is removed.
     */
    public static Staging beside(Path folder) throws IOException {
        Path parent = folder.getParent();
        if (parent == null) {
            throw new FileSystemException(
                    folder.toString(), null, "it is the root of all files, and must be a folder within it");
        }
        if (Files.isSymbolicLink(folder) && !Files.exists(folder)) {
            throw new FileSystemException(folder.toString(), null, "it is a link that leads nowhere");
        }
        String name = "." + folder.getFileName() + ".part";
        List<Path> made = new ArrayList<>();
        try {
            makeParents(parent, made);
            removeDead(parent, name);
            return new Staging(makeNew(parent, name), made);
        } catch (IOException e) {
            remove(made);
            throw e;
        }
    }

    private static void makeParents(Path folder, List<Path> made) throws IOException {
        if (!Files.isDirectory(folder)) {
            Path parent = folder.getParent();
            if (parent != null) {
                makeParents(parent, made);
            }
            Files.createDirectory(folder);
            made.add(0, folder);
        }
    }

    private static void removeDead(Path parent, String name) throws IOException {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(
                parent, path -> path.getFileName().toString().startsWith(name) && StagingLock.isDead(path))) {
            all.forEach(Staging::removeAll);
        }
    }

    /** Another run may be writing beside us, or one that was killed has left its folder. */
    private static Path makeNew(Path parent, String name) throws IOException {
        for (int number = 1; number < TRIES; number++) {
            try {
                return Files.createDirectory(parent.resolve(name + number));
            } catch (FileAlreadyExistsException e) {
                // Taken: the next number.
            }
        }
        throw new IOException("there are " + TRIES + " unfinished reports named " + name + " in " + parent);
    }

    public Path path() {
        return path;
    }

    /** Moves the files named to {@code folder}, all of them or none; earlier ones of the same names are replaced. */
    public void moveInto(Path folder, List<String> files) throws IOException {
        lock.close();
        if (!Files.exists(folder)) {
            move(path, folder);
            made.clear();
            return;
        }
        for (String file : files) {
            refuseFolder(folder.resolve(file));
        }
        Path old = Files.createDirectory(path.resolve("old"));
        List<String> replaced = new ArrayList<>();
        List<String> moved = new ArrayList<>();
        try {
            for (String file : files) {
                if (Files.exists(folder.resolve(file))) {
                    move(folder.resolve(file), old.resolve(file));
                    replaced.add(file);
                }
                move(path.resolve(file), folder.resolve(file));
                moved.add(file);
            }
        } catch (IOException e) {
            for (String file : moved) {
                Files.deleteIfExists(folder.resolve(file));
            }
            for (String file : replaced) {
                move(old.resolve(file), folder.resolve(file));
            }
            throw e;
        }
        made.clear();
    }

    /** A file replaces an earlier file, never a folder that somebody has put in its place. */
    static void refuseFolder(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a folder, and must be a file");
        }
    }

    private static void move(Path from, Path to) throws IOException {
        CopyOption[] none = {};
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, none);
        }
    }

    /** Removes the folder with what is left in it, and parents made for it, where nothing was put in place. */
    public void drop() {
        if (Files.exists(path)) {
            try {
                lock.close();
            } catch (IOException e) {
                // The end of the program lets go of it.
            }
            removeAll(path);
        }
        remove(made);
        made.clear();
    }

    private static void removeAll(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            remove(all.sorted(Comparator.reverseOrder()).toList());
        } catch (IOException e) {
            // A folder that cannot be listed cannot be removed; its name says what it is.
        }
    }

    private static void remove(List<Path> paths) {
        for (Path each : paths) {
            try {
                Files.deleteIfExists(each);
            } catch (IOException e) {
                // Somebody else has put something there, or took the right away: it stays.
            }
        }
    }
}
