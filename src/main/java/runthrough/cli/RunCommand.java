package runthrough.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.study.Answer;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;

/** The main job: simulates a scenario and says whether the line runs through its coil changes. */
@Command(
        name = "run",
        description = "Simulates a scenario and says whether the line runs through its coil changes.",
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
            "  runthrough run my-line.yaml --replications 200 --results-in us",
            "  runthrough run my-line.yaml --require-target || echo not good enough"
        })
final class RunCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file.")
    private Path scenario;

    @Option(names = "--require-target", description = "Exit with 3 when the target is not met, or not decided.")
    private boolean requireTarget;

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

    RunCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Scenario asked = Scenario.read(surroundings.path(scenario)).with(overrides);
        asked.warnings().stream().map(Scenario::asWarning).forEach(surroundings.err()::println);
        StudyResult result = study(asked);
        new VerdictScreen(result, colour.in(surroundings)).lines().forEach(surroundings.out()::println);
        boolean isMet = result.verdict().answer() == Answer.MEETS;
        return requireTarget && !isMet ? ExitCode.TARGET_NOT_MET : ExitCode.DONE;
    }

    private StudyResult study(Scenario asked) {
        StudyOptions plain = StudyOptions.plain();
        StudyOptions options = threads == null ? plain : plain.withThreads(Math.toIntExact(threads));
        try (Progress progress = new Progress(surroundings)) {
            return new RunThroughStudy(asked.brief()).run(options, progress);
        }
    }

    static final class Threads extends WholeNumber {
        Threads() {
            super(1, 1024);
        }
    }
}
