package runthrough.report.write;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import runthrough.folder.FolderLock;
import runthrough.folder.Hindrance;
import runthrough.folder.TemporaryFolder;

/**
 * A folder beside another, in which files are made before they are moved there. Until {@link #drop} it says that its run lives; a
 * run that was killed while it moved files is finished by the next one for the same folder.
 */
public final class Staging {
    private static final int TRIES = 1000;

    /** Within the folder: what is made, and what it replaces, kept until all is in place. */
    private static final String NEW = "new";

    private static final String OLD = "old";

    private static final String PART = ".part";

    /** Behind {@link #PART}: runs that are at work for the same folder count from 1, below {@link #TRIES}. */
    private static final String NUMBER = "([1-9]\\d{0,2})";

    private final Path root;
    private final Path path;
    private final FolderLock lock;
    private final List<Path> made;

    private Staging(Path root, List<Path> made) throws IOException {
        this.root = root;
        this.path = root.resolve(NEW);
        this.made = made;
        try {
            this.lock = FolderLock.of(root);
        } catch (IOException e) {
            TemporaryFolder.delete(root);
            throw e;
        }
        try {
            Files.createDirectory(path);
        } catch (IOException e) {
            drop();
            throw e;
        }
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
        Optional<String> hindrance = Hindrance.ofLink(folder);
        if (hindrance.isPresent()) {
            throw new FileSystemException(folder.toString(), null, hindrance.get());
        }
        String name = "." + folder.getFileName() + PART;
        List<Path> made = new ArrayList<>();
        try {
            makeParents(parent, made);
            finishDead(parent, name, folder);
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

    private static void finishDead(Path parent, String name, Path folder) {
        Pattern ours = Pattern.compile(Pattern.quote(name) + NUMBER);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(
                parent, path -> ours.matcher(path.getFileName().toString()).matches())) {
            for (Path dead : all) {
                boolean isHalfMoved = isAmongItsMoves(dead) && Files.isDirectory(folder);
                FolderLock.inDead(dead, () -> {
                    if (isHalfMoved) {
                        finish(dead, folder);
                    }
                    TemporaryFolder.delete(dead);
                });
            }
        } catch (IOException | DirectoryIteratorException e) {
            // It stays for another run.
        }
    }

    /** Whether a run was killed while it moved files; without a lock, its moves were done with. */
    private static boolean isAmongItsMoves(Path dead) {
        return Files.isDirectory(dead.resolve(OLD)) && FolderLock.isThere(dead);
    }

    /** Puts in place what a run had not yet when it was killed, unless another has since. */
    private static void finish(Path dead, Path folder) throws IOException {
        Turn turn = turn(dead);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(dead.resolve(NEW))) {
            for (Path file : files) {
                Path place = folder.resolve(file.getFileName());
                if (!Files.exists(place)
                        || Files.getLastModifiedTime(file).compareTo(Files.getLastModifiedTime(place)) >= 0) {
                    move(file, place);
                }
            }
        } finally {
            turn.close();
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

    /** Where files are made. */
    public Path path() {
        return path;
    }

    /**
     * Moves the files named to {@code folder}, all of them or none; earlier ones of the same names are replaced.
     *
     * @throws CancellationException when the thread was interrupted
     */
    public void moveInto(Path folder, List<String> files) throws IOException {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("given up before the files were put in place");
        }
        if (Files.exists(folder) || !isMovedAs(folder)) {
            replace(folder, files);
        }
        made.clear();
    }

    /** Moves all at once, where there is no folder of that name, nor has another run made one just now. */
    private boolean isMovedAs(Path folder) throws IOException {
        try {
            move(path, folder);
            return true;
        } catch (IOException e) {
            if (Files.isDirectory(folder)) {
                return false;
            }
            throw e;
        }
    }

    private void replace(Path folder, List<String> files) throws IOException {
        for (String file : files) {
            refuseFolder(folder.resolve(file));
        }
        Turn turn = turn(root);
        try {
            replaceInTurn(folder, files);
        } finally {
            turn.close();
        }
    }

    /** That of a run whose files are in {@code root}. */
    private static Turn turn(Path root) throws IOException {
        String name = String.valueOf(root.getFileName());
        int end = name.lastIndexOf(PART) + PART.length();
        return Turn.of(root.resolveSibling(name.substring(0, end) + ".lock"), Integer.parseInt(name.substring(end)));
    }

    private void replaceInTurn(Path folder, List<String> files) throws IOException {
        Path old = Files.createDirectory(root.resolve(OLD));
        List<String> moved = new ArrayList<>();
        try {
            for (String file : files) {
                keep(folder.resolve(file), old.resolve(file));
                moved.add(file);
                move(path.resolve(file), folder.resolve(file));
            }
        } catch (IOException e) {
            for (String file : moved) {
                putBack(old.resolve(file), folder.resolve(file));
            }
            throw e;
        }
    }

    /** A second name, where the disk knows such, so that the file is never missing. */
    private static void keep(Path file, Path old) throws IOException {
        if (Files.exists(file)) {
            try {
                Files.createLink(old, file);
            } catch (IOException | UnsupportedOperationException e) {
                move(file, old);
            }
        }
    }

    private static void putBack(Path old, Path file) throws IOException {
        if (Files.exists(old)) {
            move(old, file);
        } else {
            Files.deleteIfExists(file);
        }
    }

    /** A file replaces an earlier file, never a folder that somebody has put in its place. */
    static void refuseFolder(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a folder, and must be a file");
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        } catch (AccessDeniedException e) {
            // Of the two it names the one that was made, which can be written.
            throw new AccessDeniedException(to.toString());
        }
    }

    /** Removes the folder with what is left in it, and parents made for it, where nothing was put in place. */
    public void drop() {
        if (Files.exists(root)) {
            try {
                lock.close();
            } catch (IOException e) {
                // The end of the program lets go of it.
            }
            TemporaryFolder.delete(root);
        }
        remove(made);
        made.clear();
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
