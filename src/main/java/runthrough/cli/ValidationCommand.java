package runthrough.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.WholeFile;
import runthrough.report.validation.CheckFolder;
import runthrough.report.validation.CheckFolderException;
import runthrough.report.validation.ValidationReport;

/** Makes the page that shows how the program's numbers were checked, for those who have its sources. */
@Command(
        name = "validation",
        description =
                "Shows how the numbers of this program were checked against the outside world: makes a page of what its "
                        + "tests recorded, and prints the same as text. For those who build it: the tests write the records.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done, and all checks agree",
            ExitCode.INTERNAL_ERROR_MEANS,
            "2:no records, or the page cannot be written",
            ExitCode.CHECK_FAILED_MEANS
        },
        footerHeading = "%nExamples:%n",
        footer = {"  mvn verify && runthrough validation", "  runthrough validation --out /somewhere/else.html"})
final class ValidationCommand implements Callable<Integer> {
    private final Environment environment;

    @Option(
            names = "--from",
            paramLabel = "FOLDER",
            defaultValue = "target/checks",
            description = "Where the tests left their records; ${DEFAULT-VALUE} by default.")
    private Path from;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            defaultValue = "reports/validation.html",
            description = "The page; ${DEFAULT-VALUE} by default.")
    private Path out;

    ValidationCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        ValidationReport report = read();
        new WholeFile(out, "--out").write(report.html(), environment);
        environment.out().print(report.text());
        environment.out().println("\nPage: " + out);
        return report.passed() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }

    private ValidationReport read() {
        try {
            return new ValidationReport(new CheckFolder(environment.path(from)).read());
        } catch (CheckFolderException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }
}
