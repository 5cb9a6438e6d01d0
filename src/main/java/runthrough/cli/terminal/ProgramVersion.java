package runthrough.cli.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The program's name and version, as the build wrote them into {@code version.txt}. */
public final class ProgramVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {text()};
    }

    public static String text() {
        try (InputStream text = Objects.requireNonNull(ProgramVersion.class.getResourceAsStream("version.txt"))) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException("version.txt of the program itself", e);
        }
    }
}
