package runthrough.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The program's name and version, as the build wrote them into {@code version.txt}. */
final class ProgramVersion implements IVersionProvider {

    @Override
    public String[] getVersion() throws IOException {
        try (InputStream text = Objects.requireNonNull(ProgramVersion.class.getResourceAsStream("version.txt"))) {
            return new String[] {new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()};
        }
    }
}
