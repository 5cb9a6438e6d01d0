package runthrough.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Colour;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.ReportPlace;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.InterruptedStudyException;
import runthrough.cli.terminal.Progress;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.study.Share;
import runthrough.study.StudyListener;

/** What the studies have in common: a scenario in, an answer out, to the terminal or as JSON, and into a folder. */
abstract class StudyCommand implements Callable<Integer> {
    private final Environment environment;
    private final String name;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    @Option(
            names = "--target",
            paramLabel = "SHARE",
            converter = QuantityConverter.Target.class,
            description =
                    "Share of coil changes that should run through, such as 99.5%%, instead of what the scenario says.")
    private @Nullable Double target;

    @Option(names = "--json", description = "Print the answer as JSON, and nothing else, to standard output.")
    private boolean json;

    @ArgGroup
    private @Nullable ReportPlace report;

    @Option(names = "--date", paramLabel = "TEXT", description = "A date to print in the report; none by default.")
    private @Nullable String date;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = RunCommand.Threads.class,
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

    /** What the command line says otherwise than the scenario. */
    final RunOverrides overrides() {
        return overrides;
    }

    /** A command called {@code name}. */
    StudyCommand(Environment environment, String name) {
        this.environment = environment;
        this.name = name;
    }

    /** A study that has been checked and can be run. */
    interface Study {
        Answer run(int threads, StudyListener listener, List<String> warnings, Provenance provenance);

        /** The report will stand in {@code folder}; a study that takes long may keep beside it what is done. */
        default void reportGoesTo(Path folder) {}

        /** The report is in place: nothing need be kept any longer. */
        default void reportIsThere() {}

        /** What is kept when it is given up before that, and how to go on. */
        default Optional<String> kept() {
            return Optional.empty();
        }
    }

    /**
     * What to run.
     *
     * @throws runthrough.study.StudyException when that cannot be asked, before anything is computed
     */
    abstract Study study(Scenario asked, double target);

    @Override
    public final Integer call() {
        Scenario asked = Scenario.read(scenario, overrides, environment);
        Study study = study(asked, target == null ? asked.targetBelowAll() : Share.targetBelowAll(target));
        asked.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        Optional<Path> folder = (report == null ? new ReportPlace() : report).folder(placed());
        Answer answer = folder.isPresent() ? runInto(environment.path(folder.get()), study, asked) : run(study, asked);
        print(answer, folder);
        return ExitCode.DONE;
    }

    /** The scenario's name with the command's behind it, so that the studies of a line do not take each other's folder. */
    private Path placed() {
        return Path.of(ReportPlace.name(scenario) + "-" + name);
    }

    private Answer runInto(Path folder, Study study, Scenario asked) {
        try (FolderWriter files = FolderWriter.open(folder)) {
            study.reportGoesTo(folder);
            Answer answer = run(study, asked);
            files.complete(answer);
            study.reportIsThere();
            return answer;
        } catch (CancellationException e) {
            throw study.kept()
                    .<CancellationException>map(InterruptedStudyException::new)
                    .orElse(e);
        }
    }

    private Answer run(Study study, Scenario asked) {
        int atOnce = threads == null ? Runtime.getRuntime().availableProcessors() : Math.toIntExact(threads);
        try (Progress progress = new Progress(environment, StudyListener.NONE)) {
            return asked.running(() -> study.run(atOnce, progress, asked.warnings(), asked.provenance(date)));
        }
    }

    private void print(Answer answer, Optional<Path> folder) {
        if (json) {
            environment.out().print(JsonWriter.render(answer));
        } else {
            environment.out().print(TerminalWriter.render(answer, colour.isOnIn(environment)));
            folder.ifPresent(path -> environment.out().println("\nReport: " + path.resolve(FolderWriter.HTML)));
        }
        environment.out().flush();
    }
}
