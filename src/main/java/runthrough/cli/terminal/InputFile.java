package runthrough.cli.terminal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A file that the user named to be read.
 *
 * @param path where it is, or where one beside the others would be that came by standard input
 * @param piped its bytes, where they came by standard input
 */
@SuppressWarnings("ArrayRecordComponent") // handed on once, and never compared
public record InputFile(Path path, Optional<byte[]> piped) {

    /** Whether {@code given} by the user means standard input; a file of that name is {@code ./-}. */
    public static boolean isStandardInput(Path given) {
        return given.toString().equals("-");
    }

    /**
     * What the user means by {@code given}.
     *
     * @param largest size that is read from standard input (bytes); one more is read, so that a larger one is noticed
     * @throws BadInputException when standard input cannot be read
     */
    public static InputFile of(Path given, int largest, Environment environment) {
        if (!isStandardInput(given)) {
            return new InputFile(environment.path(given), Optional.empty());
        }
        try {
            return new InputFile(
                    environment.path(Path.of("standard input")),
                    Optional.of(environment.in().readNBytes(largest + 1)));
        } catch (IOException e) {
            throw new BadInputException("standard input cannot be read (" + e.getMessage() + "). Give a file.");
        }
    }
}
