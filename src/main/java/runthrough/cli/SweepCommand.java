package runthrough.cli;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.sweep.CaseFile;
import runthrough.cli.sweep.LineFormat;
import runthrough.cli.sweep.ShardConverter;
import runthrough.cli.sweep.SweepIdentity;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.InputFile;
import runthrough.cli.terminal.InterruptedStudyException;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.cli.terminal.Progress;
import runthrough.report.sweep.SweepFile;
import runthrough.report.sweep.SweepLines;
import runthrough.report.sweep.SweepName;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.study.StudyListener;
import runthrough.study.sweep.Cases;
import runthrough.study.sweep.Shard;
import runthrough.study.sweep.SweepStudy;
import runthrough.study.sweep.SweepStudy.Asked;

/** Many cases of a scenario, one line of JSON or CSV for each. */
@Command(
        name = "sweep",
        description = {
            "Runs many cases of a scenario, each with its own values, and prints a line of JSON or CSV for each. Cases are"
                    + " named in a file (--cases), form a grid (--vary), or fill a space evenly (--vary with --fill).",
            "All cases use the seed of the scenario unless one sets run.seed. A case that cannot be run says why in its line."
                    + " Lines come in the order of the cases, the same with any number of threads."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            ExitCode.DONE_MEANS,
            ExitCode.INTERNAL_ERROR_MEANS,
            ExitCode.BAD_INPUT_MEANS,
            ExitCode.CASE_FAILED_MEANS
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough sweep my-line.yaml --vary coil-change.crew=1,2,3 \\",
            "      --vary entry.top-speed=60m/min..120m/min:7",
            "  runthrough sweep my-line.yaml --vary joint-cycle-time=40s..100s \\",
            "      --vary usable-capacity=50m..120m --fill 256 --format csv",
            "  runthrough sweep my-line.yaml --cases cases.jsonl --shard 2/8 \\",
            "      --out part-2.jsonl",
            "  runthrough sweep scenarios/tube-line-measured.yaml \\",
            "      --vary accumulator.stroke=7m..11m:5 \\",
            "      --vary process.speed=40m/min..50m/min:5 --uncertainty 200",
            "  make-cases | runthrough sweep my-line.yaml --cases - | head"
        })
final class SweepCommand implements Callable<Integer> {
    private final Environment environment;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    @Option(
            names = "--vary",
            paramLabel = "PATH=VALUES",
            description = {
                "Values of an input: PATH=A,B,C or PATH=FROM..TO:POINTS; with --fill PATH=FROM..TO. May be given several"
                        + " times: every value with every value of the others.",
                "The command inputs lists the numbers of a scenario by their paths."
            })
    private List<String> vary = new ArrayList<>();

    @Option(
            names = "--fill",
            paramLabel = "N",
            converter = CaseCount.class,
            description =
                    "In the place of a grid, N cases that fill the space evenly: the first points of the Sobol sequence."
                            + " Best is a power of two.")
    private @Nullable Long fill;

    @Option(
            names = "--cases",
            paramLabel = "FILE",
            description =
                    "The cases one by one, - for standard input: JSON Lines with values by path, or CSV with paths as header"
                            + " and perhaps a unit in brackets behind each.")
    private @Nullable Path cases;

    @Option(
            names = "--uncertainty",
            paramLabel = "N",
            converter = UncertaintyCommand.Resamples.class,
            description =
                    "Also state of each case how well its answer is known when its times are known from observations only, with N"
                            + " resamples of them, as the command uncertainty does (which takes 200).")
    private @Nullable Long uncertainty;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            converter = LineFormat.Words.class,
            completionCandidates = LineFormat.Words.class,
            description = "json (JSON Lines, by default) or csv. The members: runthrough schema sweep.")
    private LineFormat format = LineFormat.JSON;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to this file. When interrupted, the same command goes on behind its last whole line.")
    private @Nullable Path out;

    @Option(
            names = "--shard",
            paramLabel = "K/N",
            converter = ShardConverter.class,
            description = "Run only part K of N, so that N machines share the cases; merge puts their files together.")
    private Shard shard = Shard.WHOLE;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = RunCommand.Threads.class,
            description = "Cases that run at once; one for each processor by default. The lines are the same.")
    private @Nullable Long threads;

    @Mixin
    private RunOverrides overrides;

    SweepCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        if (cases != null && InputFile.isStandardInput(cases) && InputFile.isStandardInput(scenario)) {
            throw new BadInputException(
                    "--cases -; standard input is the scenario already. Give one of them as a file.");
        }
        Prepared prepared = prepared();
        int[] indices = shard.indices(prepared.name().cases());
        int failed = out == null ? print(prepared, indices) : write(prepared, indices, out);
        return failed == 0 ? ExitCode.DONE : ExitCode.CASE_FAILED;
    }

    /**
     * A sweep that can be run.
     *
     * @param tables that the scenario and the cases name
     */
    record Prepared(SweepName name, SweepStudy study, List<Path> tables) {
        Prepared {
            tables = List.copyOf(tables);
        }
    }

    /** The sweep that the options ask for. */
    Prepared prepared() {
        Scenario asked = Scenario.read(scenario, overrides, environment);
        Cases given = cases(asked);
        asked.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        List<Setting> common = asked.file().replacing(overrides.planSettings(), asked.settings());
        List<Path> tables = asked.file().tables(naming(common, given));
        SweepIdentity identity = new SweepIdentity(ProgramVersion.text() + "\n" + asked.fingerprint())
                .with(common)
                .with(given)
                .withTables(tables);
        if (uncertainty != null) {
            identity.with(uncertainty + " resamples");
        }
        return new Prepared(
                new SweepName(identity.text(), given.count(), given.paths(), uncertainty != null),
                study(new SweepStudy(given, values -> asked(asked, common, values))),
                tables);
    }

    private SweepStudy study(SweepStudy plain) {
        return uncertainty == null ? plain : plain.withUncertainty(Math.toIntExact(uncertainty));
    }

    /** The files, as the command line names them, that the sweep reads besides tables. */
    List<Path> inputs() {
        return Stream.of(Optional.of(scenario), Optional.ofNullable(cases), overrides.times())
                .flatMap(Optional::stream)
                .toList();
    }

    private Cases cases(Scenario asked) {
        if (cases != null) {
            if (!vary.isEmpty() || fill != null) {
                throw new BadInputException(
                        "--cases names all cases; --vary and --fill cannot be given besides. Leave out one or the other.");
            }
            return CaseFile.read(cases, environment);
        }
        if (vary.isEmpty()) {
            throw new BadInputException("sweep needs cases. Give --cases FILE or --vary PATH=VALUES.");
        }
        if (fill != null) {
            return Cases.filling(all((option, problems) -> option.span(asked, problems)), Math.toIntExact(fill));
        }
        return Cases.grid(all((option, problems) -> option.steps(asked, problems)));
    }

    private <T> List<T> all(BiFunction<VaryOption, Problems, Optional<T>> read) {
        Problems problems = new Problems();
        List<T> all = vary.stream()
                .flatMap(text -> read.apply(new VaryOption(text), problems).stream())
                .toList();
        BadInputException.throwIfAny(problems);
        return all;
    }

    private static Asked asked(Scenario scenario, List<Setting> common, Map<String, String> values) {
        Problems problems = new Problems();
        List<Setting> own = values.entrySet().stream()
                .flatMap(value -> Setting.written(value.getKey(), value.getValue(), "case", problems).stream())
                .toList();
        if (!problems.none()) {
            return new Asked.Refused(why(problems.errors()));
        }
        ScenarioReading reading = scenario.file().with(scenario.file().replacing(own, common));
        return reading instanceof ScenarioReading.Accepted accepted
                ? new Asked.Possible(accepted.request())
                : new Asked.Refused(why(((ScenarioReading.Refused) reading).problems()));
    }

    /** {@code problem} with the name of its file alone: the lines of a sweep are the same from whatever folder it is run. */
    private static Problem byFileName(Problem problem) {
        String name = new File(problem.file()).getName();
        return problem.at(new Place(name, problem.line(), problem.column()), problem.path());
    }

    private static String why(List<Problem> problems) {
        return problems.stream()
                .map(SweepCommand::byFileName)
                .map(problem -> problem.toString().replaceFirst("^case:? ", ""))
                .collect(Collectors.joining(" "));
    }

    /** The settings that may name a table. */
    private static List<Setting> naming(List<Setting> common, Cases given) {
        List<Setting> naming = new ArrayList<>(common);
        for (int i = 0; i < given.count(); i++) {
            given.values().apply(i).forEach((path, value) -> {
                if (path.matches("(?s).*(schedule|sheet).*") || value.matches("(?s).*(schedule|sheet).*")) {
                    Setting.written(path, value, "case", new Problems()).ifPresent(naming::add);
                }
            });
        }
        return naming;
    }

    private int print(Prepared sweep, int[] indices) {
        SweepLines lines = format.lines(sweep.name());
        int[] failed = {0};
        lines.header().ifPresent(header -> environment.out().print(header + "\n"));
        try (Progress progress = new Progress(environment, StudyListener.NONE)) {
            sweep.study().run(indices, threads(), progress, result -> {
                environment.out().print(lines.line(result) + "\n");
                environment.out().flush();
                failed[0] += result.verdict().isEmpty() ? 1 : 0;
            });
        } catch (CancellationException e) {
            throw new InterruptedStudyException("the lines that were printed are whole");
        }
        return failed[0];
    }

    private int write(Prepared sweep, int[] indices, Path named) {
        try (SweepFile file =
                        SweepFile.open(environment.path(named), format.lines(sweep.name()), sweep.name(), indices);
                Progress progress = new Progress(environment, StudyListener.NONE)) {
            file.word().ifPresent(environment.err()::println);
            sweep.study().run(Arrays.copyOfRange(indices, file.done(), indices.length), threads(), progress, file::add);
            environment
                    .out()
                    .println(indices.length + (indices.length == 1 ? " case" : " cases") + ", of which " + file.failed()
                            + " could not be run: " + named);
            return file.failed();
        } catch (CancellationException e) {
            throw new InterruptedStudyException(
                    "the cases that were done are kept; the same command goes on from there");
        }
    }

    private int threads() {
        return threads == null ? Runtime.getRuntime().availableProcessors() : Math.toIntExact(threads);
    }

    static final class CaseCount extends WholeNumber {
        CaseCount() {
            super(1, Cases.MOST);
        }
    }
}
