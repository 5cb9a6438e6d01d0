package runthrough.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import runthrough.cli.terminal.InputFile;

/** Where the report goes, if there is to be one. */
public final class ReportPlace {
    private static final Path REPORTS = Path.of("reports");

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description =
                    "Folder of the report; by default reports/ and the scenario's name. Of an earlier report there "
                            + "files of the same names are replaced; all other files are left alone.")
    private @Nullable Path out;

    @Option(names = "--no-report", description = "Write no report.")
    private boolean none;

    /** The folder for the report on {@code scenario}; empty for none. */
    public Optional<Path> folder(Path scenario) {
        if (none) {
            return Optional.empty();
        }
        return Optional.of(out == null ? REPORTS.resolve(name(scenario)) : out);
    }

    /** What a report on {@code scenario} is named after. */
    public static String name(Path scenario) {
        return InputFile.isStandardInput(scenario)
                ? "standard-input"
                : String.valueOf(scenario.getFileName()).replaceFirst("\\.ya?ml$", "");
    }
}
