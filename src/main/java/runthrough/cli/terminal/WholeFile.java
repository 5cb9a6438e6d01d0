package runthrough.cli.terminal;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import runthrough.folder.Hindrance;
import runthrough.report.write.Staging;

/**
 * A file that the user named to be written: it takes the place of an earlier one only when it is whole.
 *
 * @param named as the user named it
 * @param option with which another can be named
 */
public record WholeFile(Path named, String option) {

    /**
     * Writes {@code text}.
     *
     * @throws BadInputException when it cannot be written
     */
    public void write(String text, Environment environment) {
        write(writer -> writer.append(text), environment);
    }

    /**
     * This file, before anything is done: a file can be put there, and it is none of {@code others}.
     *
     * @param others that the command reads, or writes itself
     * @throws BadInputException when it is one of them, by whatever name, or cannot be written
     */
    public WholeFile apartFrom(List<Path> others, Environment environment) {
        for (Path one : others) {
            if (isSame(whole(one, environment), whole(named, environment))) {
                throw refused("it is what this command itself reads or writes");
            }
        }
        Hindrance.toFile(whole(named, environment)).ifPresent(hindrance -> {
            throw refused(hindrance);
        });
        if (!isWritable(whole(named, environment).getParent())) {
            throw refused("no permission");
        }
        return this;
    }

    private static Path whole(Path path, Environment environment) {
        return environment.path(path).toAbsolutePath().normalize();
    }

    /** Whether something can be put into {@code folder}, or into the nearest above that is there. */
    private static boolean isWritable(@Nullable Path folder) {
        Path there = folder;
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        return there == null || Files.isWritable(there);
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return one.equals(other) || Files.isSameFile(one, other);
        } catch (IOException e) {
            // One of them is not there.
            return false;
        }
    }

    /** Writes a text that may be too long to be held. */
    @FunctionalInterface
    public interface Writing {
        void writeTo(Appendable file) throws IOException;
    }

    /**
     * Writes what {@code text} writes.
     *
     * @throws BadInputException when it cannot be written
     */
    public void write(Writing text, Environment environment) {
        Path target = whole(named, environment);
        Hindrance.toFile(target).ifPresent(hindrance -> {
            throw refused(hindrance);
        });
        try {
            write(text, Files.isSymbolicLink(target) ? target.toRealPath() : target);
        } catch (IOException e) {
            throw refused(Hindrance.words(e));
        }
    }

    private static void write(Writing text, Path target) throws IOException {
        Staging staging = Staging.beside(target);
        try {
            String name = String.valueOf(target.getFileName());
            try (Writer writer = Files.newBufferedWriter(staging.path().resolve(name))) {
                text.writeTo(writer);
            }
            staging.moveInto(target.resolveSibling(""), List.of(name));
        } finally {
            staging.drop();
        }
    }

    private BadInputException refused(String why) {
        return new BadInputException(named + " cannot be written: " + why + ". Name another file with " + option + ".");
    }
}
