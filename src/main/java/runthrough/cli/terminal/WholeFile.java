package runthrough.cli.terminal;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

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
        Path target = environment.path(named).toAbsolutePath().normalize();
        if (Files.isDirectory(target)) {
            throw refused("it is a folder");
        }
        Path unfinished = Path.of(target + ".part");
        try {
            Files.createDirectories(target.resolve("..").normalize());
            try (Writer writer = Files.newBufferedWriter(unfinished)) {
                text.writeTo(writer);
            }
            Files.move(unfinished, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw refused(e instanceof AccessDeniedException ? "no permission" : String.valueOf(e.getMessage()));
        }
    }

    private BadInputException refused(String why) {
        return new BadInputException(named + " cannot be written: " + why + ". Name another file with " + option + ".");
    }
}
