package runthrough.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Choice;
import runthrough.cli.option.ReportPlace;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.cli.terminal.Progress;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentFiles;
import runthrough.report.document.Paper;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;

/** Makes the document that is handed over. */
@Command(
        name = "document",
        description =
                "Makes the document to hand over, as HTML and PDF: a summary page, a drawing of the line, the hand calculation step"
                        + " by step, results, equipment data, what each alternative is worth, and every input with its source. Also"
                        + " makes the answer as one picture for a slide.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough document scenarios/tube-line.yaml",
            "  runthrough document my-line.yaml --paper letter --results-in us \\",
            "      --date \"3 March 2031\" --out hand-over"
        })
final class DocumentCommand implements Callable<Integer> {
    /** So many letters are named of those that the font lacks. */
    private static final int SOME = 10;

    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder of the document; by default reports/, the scenario's name and -document. An earlier "
                    + "document there is replaced, other files are left alone.")
    private @Nullable Path out;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            converter = Papers.class,
            completionCandidates = Papers.class,
            description = "a4 or letter; by default what goes with the units of the results.")
    private @Nullable Paper paper;

    @Option(names = "--date", paramLabel = "TEXT", description = "The date to print, instead of the scenario's.")
    private @Nullable String date;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = RunCommand.Threads.class,
            description = "Replications that run at once; one for each processor by default. The answer is the same.")
    private @Nullable Long threads;

    @Mixin
    private RunOverrides overrides;

    DocumentCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Scenario asked = Scenario.read(scenario, overrides, environment);
        asked.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        Path folder = out == null ? Path.of("reports").resolve(ReportPlace.name(scenario) + "-document") : out;
        try (FolderWriter files = FolderWriter.open(environment.path(folder))) {
            DocumentRun run = DocumentRun.of(asked, overrides);
            run.alternatives().warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
            DocumentRun.Made made = run(run);
            Paper on = paper == null ? Paper.usualWith(asked.request().resultsIn()) : paper;
            files.complete(() -> DocumentFiles.of(made.document(), on, ProgramVersion.text()));
            environment.out().print(TerminalWriter.render(made.document().report(), false));
            warnOfLetters(made.document());
        }
        List.of(DocumentFiles.HTML, DocumentFiles.PDF, DocumentFiles.SLIDE_SVG, DocumentFiles.SLIDE_PNG)
                .forEach(file -> environment.out().println(folder.resolve(file)));
        environment.out().flush();
        return ExitCode.DONE;
    }

    private void warnOfLetters(Document document) {
        List<String> letters = DocumentFiles.lettersWithoutShape(document);
        if (!letters.isEmpty()) {
            String some = letters.stream().limit(SOME).collect(Collectors.joining(" "));
            environment
                    .err()
                    .println(Scenario.asWarning("the font of the document has no shape for " + some
                            + (letters.size() > SOME ? " and " + (letters.size() - SOME) + " more letters" : "")
                            + "; on paper # stands in their place. Write them in Latin, Greek or Cyrillic letters."));
        }
    }

    private DocumentRun.Made run(DocumentRun asked) {
        StudyOptions options = StudyOptions.forReport();
        try (Progress progress = new Progress(environment, StudyListener.NONE)) {
            return asked.run(threads == null ? options : options.withThreads(Math.toIntExact(threads)), progress, date);
        }
    }

    static final class Papers extends Choice<Paper> {
        Papers() {
            or("a4", Paper.A4).or("letter", Paper.LETTER);
        }
    }
}
