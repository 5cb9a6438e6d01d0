package runthrough.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Colour;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.ReportPlace;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.Progress;
import runthrough.plant.RunPlan;
import runthrough.report.Answer;
import runthrough.report.verdict.ReportFolder;
import runthrough.report.verdict.RunThroughResult;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.study.Precision;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.WorthStudy;

/** The main job: simulates a scenario and says whether the line runs through its coil changes. */
@Command(
        name = "run",
        description = "Simulates a scenario, says whether the line runs through its coil changes, and writes a report.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            ExitCode.DONE_MEANS,
            ExitCode.INTERNAL_ERROR_MEANS,
            ExitCode.BAD_INPUT_MEANS,
            ExitCode.TARGET_NOT_MET_MEANS
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough run my-line.yaml",
            "  runthrough run my-line.yaml --replications 200 --results-in us --out today",
            "  runthrough run my-line.yaml --half-width 0.1%% --max-replications 2000",
            "  runthrough run my-line.yaml --json --no-report > verdict.json",
            "  runthrough run my-line.yaml --require-target || echo not good enough"
        })
final class RunCommand implements Callable<Integer> {
    /** So many times the replications of the plan are allowed unless given otherwise, as in a sizing. */
    private static final int MOST_TIMES = 10;

    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    @Option(
            names = "--json",
            description =
                    "Print the answer as JSON, and nothing else, to standard output. Its shape: runthrough schema verdict.")
    private boolean json;

    @Option(
            names = "--levers",
            description =
                    "Also find what would meet the targets, of one change or two together, ranked by cost where the scenario says what changes cost; takes some 100 times as long as the verdict.")
    private boolean levers;

    @Option(names = "--working", description = "Print the hand calculation step by step, too.")
    private boolean working;

    @ArgGroup
    private @Nullable ReportPlace report;

    @Option(names = "--require-target", description = "Exit with 3 when a target is not met, or not decided.")
    private boolean requireTarget;

    @Option(
            names = "--half-width",
            paramLabel = "SHARE",
            converter = QuantityConverter.Part.class,
            description =
                    "Run until the half-width of the 95%% interval of the share run through is at most this, such as 0.1%%.")
    private @Nullable Double halfWidth;

    @Option(
            names = "--max-replications",
            paramLabel = "N",
            converter = RunOverrides.Replications.class,
            description = "With --half-width, run at most this many replications; by default " + MOST_TIMES
                    + " times what the scenario says.")
    private @Nullable Long maxReplications;

    @Option(names = "--date", paramLabel = "TEXT", description = "A date to print in the report; none by default.")
    private @Nullable String date;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = Threads.class,
            description = "Replications that run at once; one for each processor by default. The answer is the same.")
    private @Nullable Long threads;

    @Option(
            names = "--colour",
            paramLabel = "WHEN",
            converter = Colour.Words.class,
            completionCandidates = Colour.Words.class,
            description = "auto, always or never. By default auto: at a terminal, unless NO_COLOR is set.")
    private Colour colour = Colour.AUTO;

    @Mixin
    private RunOverrides overrides;

    RunCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Scenario asked = Scenario.read(scenario, overrides, environment);
        Optional<Precision> precision = precision(asked.request().run());
        asked.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        ReportPlace place = report == null ? new ReportPlace() : report;
        Optional<Path> folder = place.folder(scenario);
        RunThroughResult result = folder.isPresent()
                ? runInto(environment.path(folder.get()), asked, precision)
                : run(asked, precision, StudyOptions.plain(), StudyListener.NONE);
        result.warnings().stream()
                .skip(asked.warnings().size())
                .map(Scenario::asWarning)
                .forEach(environment.err()::println);
        print(result, folder);
        return requireTarget && !result.study().verdict().meetsAll() ? ExitCode.TARGET_NOT_MET : ExitCode.DONE;
    }

    /** How well the share is to be known, if that was asked; refused here, before anything is run or written. */
    private Optional<Precision> precision(RunPlan run) {
        if (halfWidth == null && maxReplications != null) {
            throw new BadInputException(List.of("--max-replications = " + maxReplications
                    + "; has no effect without --half-width. Give that too, such as --half-width 0.1%, or give --replications"
                    + " instead."));
        }
        if (halfWidth == null) {
            return Optional.empty();
        }
        long most = maxReplications == null
                ? Math.min(RunOverrides.MOST_REPLICATIONS, (long) MOST_TIMES * run.replications())
                : maxReplications;
        return Optional.of(new Precision(halfWidth, Math.toIntExact(most)));
    }

    private RunThroughResult runInto(Path folder, Scenario asked, Optional<Precision> precision) {
        try (ReportFolder files = ReportFolder.open(folder, asked.request())) {
            RunThroughResult result = run(asked, precision, StudyOptions.forReport(), files.listener());
            files.complete(result);
            return result;
        }
    }

    private RunThroughResult run(
            Scenario asked, Optional<Precision> precision, StudyOptions options, StudyListener listener) {
        RunThroughStudy study = new RunThroughStudy(asked.request());
        try (Progress progress = new Progress(environment, listener)) {
            StudyOptions chosen = threads == null ? options : options.withThreads(Math.toIntExact(threads));
            return asked.running(() -> {
                RunThroughResult result = precision.isPresent()
                        ? RunThroughResult.of(
                                study.runUntil(precision.get(), chosen, progress),
                                asked.warnings(),
                                asked.provenance(date))
                        : RunThroughResult.of(study.run(chosen, progress), asked.warnings(), asked.provenance(date));
                RunThroughResult withWorth =
                        result.with(new WorthStudy(result.study()).run(chosen.threads(), progress));
                return levers
                        ? withWorth.with(new LeverStudy(result.study().request())
                                .ranked(asked.handover().money(), chosen.threads(), progress))
                        : withWorth;
            });
        }
    }

    private void print(RunThroughResult result, Optional<Path> folder) {
        Answer answer = VerdictAnswer.inWords(result);
        if (json) {
            environment.out().print(JsonWriter.render(answer));
        } else {
            environment.out().print(TerminalWriter.render(answer, colour.isOnIn(environment)));
            if (working) {
                environment.out().print("\n" + VerdictAnswer.working(result));
            }
            folder.ifPresent(path -> environment.out().println("\nReport: " + path.resolve(FolderWriter.HTML)));
        }
        environment.out().flush();
    }

    static final class Threads extends WholeNumber {
        Threads() {
            super(1, 1024);
        }
    }
}
