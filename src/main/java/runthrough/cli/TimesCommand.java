package runthrough.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Colour;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.ReportPlace;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.InterruptedStudyException;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.cli.terminal.WholeFile;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.times.TimesAnswer;
import runthrough.report.times.TimesResult;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.study.StudyListener;
import runthrough.study.fitting.FittingStudy;
import runthrough.study.times.SampleSize;
import runthrough.study.times.SheetStatistics;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/** What does a stopwatch sheet show, and which distributions should its times be simulated with? */
@Command(
        name = "times",
        description =
                "Reads a time-study sheet: one row for each coil change observed, one column for each work element. Gives "
                        + "means and spreads, outliers, trend, elements that are slow together, fitted distributions and whether there are enough observations, "
                        + "and writes the work of a coil change as a scenario has it.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough times scenarios/tube-line-stopwatch.csv",
            "  runthrough times sheet.csv --leave-out 17,42 \\",
            "      --timed \"March, first shift\" --fragment work.yaml",
            "  runthrough run my-line.yaml --times sheet.csv"
        })
final class TimesCommand implements Callable<Integer> {
    private static final long USUAL_SEED = 1;

    private final Environment environment;

    @Parameters(paramLabel = "SHEET", description = "The sheet, a CSV file.")
    private Path sheet;

    @Option(
            names = "--leave-out",
            paramLabel = "ROWS",
            split = ",",
            converter = RowNumber.class,
            description = "Numbers of rows to leave out, such as 17,42. None is left out unless you name it.")
    private List<Long> leaveOut = new ArrayList<>();

    @Option(
            names = "--basic-times",
            description = "Multiply each row by its rating / 100; by default times are taken as observed.")
    private boolean basicTimes;

    @Option(
            names = "--allowance",
            paramLabel = "SHARE",
            converter = QuantityConverter.Allowance.class,
            description = "Print standard times, too: basic times with this allowance added; goes with --basic-times.")
    private @Nullable Double allowance;

    @Option(
            names = "--confidence",
            paramLabel = "SHARE",
            converter = QuantityConverter.Within.class,
            description = "Confidence of the number of observations; 95.45%% by default.")
    private @Nullable Double confidence;

    @Option(
            names = "--precision",
            paramLabel = "SHARE",
            converter = QuantityConverter.Within.class,
            description = "Its precision as a share of the mean, to either side; 5%% by default.")
    private @Nullable Double precision;

    @Option(
            names = "--seed",
            paramLabel = "N",
            converter = RunOverrides.Seed.class,
            description =
                    "Seed of the random numbers that judge fits; 1 by default. The same seed gives the same bytes.")
    private @Nullable Long seed;

    @Option(
            names = "--timed",
            paramLabel = "TEXT",
            description = "When it was timed, to be noted in the scenario fragment; nothing by default.")
    private @Nullable String timed;

    @Option(
            names = "--fragment",
            paramLabel = "FILE",
            description = "Write the work of a coil change, as a scenario has it, to this file.")
    private @Nullable Path fragment;

    @Option(
            names = "--json",
            description = "Print the answer as JSON, and nothing else, to standard output. Its shape: runthrough schema"
                    + " times.")
    private boolean json;

    @ArgGroup
    private @Nullable ReportPlace report;

    @Option(names = "--date", paramLabel = "TEXT", description = "A date to print in the report; none by default.")
    private @Nullable String date;

    @Option(
            names = "--colour",
            paramLabel = "WHEN",
            converter = Colour.Words.class,
            completionCandidates = Colour.Words.class,
            description = "auto, always or never. By default auto: at a terminal, unless NO_COLOR is set.")
    private Colour colour = Colour.AUTO;

    TimesCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Optional<Path> folder = (report == null ? new ReportPlace() : report).folder(placed());
        List<Path> others = Stream.concat(Stream.of(sheet), folder.stream()).toList();
        Optional<WholeFile> work = Optional.ofNullable(fragment)
                .map(file -> new WholeFile(file, "--fragment").apartFrom(others, environment));
        MeasuredTimes measured = MeasuredTimes.read(environment.path(sheet), sheet.toString());
        TimeSheet asked = asked(measured.sheet());
        measured.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        Answer answer;
        if (folder.isPresent()) {
            try (FolderWriter files = FolderWriter.open(environment.path(folder.get()))) {
                answer = answer(measured, asked);
                List<Path> places = files.places(answer);
                work.ifPresent(file -> file.apartFrom(places, environment));
                files.complete(answer);
            }
        } else {
            answer = answer(measured, asked);
        }
        String text = answer.body().files().getOrDefault(TimesAnswer.FRAGMENT, "");
        work.ifPresent(file -> write(file, text, folder.isPresent()));
        print(answer, folder);
        return ExitCode.DONE;
    }

    private void write(WholeFile work, String text, boolean hasReport) {
        try {
            work.write(text, environment);
        } catch (CancellationException e) {
            throw hasReport ? new InterruptedStudyException("the report is written, " + work.named() + " is not") : e;
        } catch (BadInputException e) {
            throw hasReport ? new BadInputException(e.getMessage() + " The report is written.") : e;
        }
    }

    private Path placed() {
        return Path.of(String.valueOf(sheet.getFileName()).replaceFirst("\\.[A-Za-z]{1,4}$", ""));
    }

    /** The sheet with ratings applied and rows left out as asked. */
    private TimeSheet asked(TimeSheet read) {
        if (allowance != null && !basicTimes) {
            throw new BadInputException("--allowance is a share of basic times. Add --basic-times.");
        }
        List<Integer> numbers = leaveOut.stream().map(Math::toIntExact).toList();
        List<Integer> known = read.rows().stream().map(Observation::number).toList();
        List<String> wrong = numbers.stream()
                .filter(number -> !known.contains(number))
                .map(number ->
                        "--leave-out = " + number + "; the sheet has no such row with times. Rows are counted from 1"
                                + " below the header, up to " + known.get(known.size() - 1) + ".")
                .toList();
        if (!wrong.isEmpty()) {
            throw new BadInputException(wrong);
        }
        if (numbers.containsAll(known)) {
            throw new BadInputException("--leave-out leaves no row. Name fewer.");
        }
        TimeSheet kept = read.without(numbers);
        for (int i = 0; i < kept.elements().size(); i++) {
            if (kept.times(i).length == 0) {
                throw new BadInputException("--leave-out leaves no time of "
                        + kept.elements().get(i).label() + ". Name fewer rows, or leave the column out of the sheet.");
            }
        }
        return basicTimes ? kept.basicTimes() : kept;
    }

    private Answer answer(MeasuredTimes measured, TimeSheet asked) {
        long randomNumbers = seed == null ? USUAL_SEED : seed;
        SheetStatistics statistics = SheetStatistics.of(asked, randomNumbers);
        List<SampleSize> sizes = statistics.elements().stream()
                .map(element -> SampleSize.of(
                        confidence == null ? SampleSize.USUAL_CONFIDENCE : confidence,
                        precision == null ? SampleSize.USUAL_PRECISION : precision,
                        element.sample().values()))
                .toList();
        TimesResult result = new TimesResult(
                statistics,
                new FittingStudy(randomNumbers).run(statistics, StudyListener.NONE),
                sizes,
                basicTimes,
                Optional.ofNullable(allowance),
                leaveOut.stream().map(Math::toIntExact).sorted().distinct().toList(),
                Optional.ofNullable(timed),
                randomNumbers);
        return TimesAnswer.of(
                result,
                measured.warnings(),
                new Provenance(
                        ProgramVersion.text(),
                        Optional.of(measured.fingerprint()),
                        List.of(),
                        Optional.ofNullable(date)));
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

    static final class RowNumber extends WholeNumber {
        RowNumber() {
            super(1, 1_000_000);
        }
    }
}
