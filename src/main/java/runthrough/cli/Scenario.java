package runthrough.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.InputFile;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.plant.CoilChange;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.plant.handover.Handover;
import runthrough.report.Fingerprint;
import runthrough.report.Provenance;
import runthrough.report.document.GivenValue;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.simulation.records.SimulationException;
import runthrough.study.Share;
import runthrough.study.StudyException;
import runthrough.web.study.GivenValues;

/**
 * A scenario that can be run, and what to warn of.
 *
 * @param file it was read from
 * @param settings what was set otherwise than the file says
 * @param request what is asked
 * @param warnings one line each
 * @param handover what it says for its document
 * @param fingerprint SHA-256 of the file's bytes, in hexadecimal
 */
record Scenario(
        ScenarioFile file,
        List<Setting> settings,
        SimulationRequest request,
        List<String> warnings,
        Handover handover,
        String fingerprint) {

    /** Letters of a value that are shown beside what it is instead of. */
    private static final int LONGEST = 120;

    Scenario {
        settings = List.copyOf(settings);
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads {@code file}.
     *
     * @param file as the command line names it
     * @throws BadInputException with everything that is wrong with it
     */
    static Scenario read(Path file, Environment environment) {
        return of(Opened.of(file, environment), List.of());
    }

    /** A file as it was opened, with its SHA-256; so that standard input is read once. */
    private record Opened(ScenarioFile file, Supplier<String> fingerprint) {

        static Opened of(Path given, Environment environment) {
            InputFile input = InputFile.of(given, ScenarioFile.LARGEST_FILE, environment);
            return input.piped()
                    .map(bytes -> new Opened(ScenarioFile.of(input.path(), bytes), () -> Fingerprint.of(bytes)))
                    .orElseGet(() ->
                            new Opened(ScenarioFile.open(input.path()), () -> Scenario.fingerprint(input.path())));
        }
    }

    /**
     * Reads {@code file} with what the command line says otherwise.
     *
     * @param file as the command line names it
     * @param environment where files that the command line names are
     * @throws BadInputException with everything that is wrong with either, or with the two together
     */
    static Scenario read(Path file, RunOverrides overrides, Environment environment) {
        Problems problems = new Problems();
        Opened input = Opened.of(file, environment);
        ScenarioFile opened = input.file();
        List<Setting> settings = overrides.settings(opened, problems);
        if (!problems.none()) {
            throw new BadInputException(
                    Stream.concat(texts(problems.errors()), refusal(opened, settings, opened.with(settings)).stream())
                            .toList());
        }
        if (overrides.times().isEmpty()) {
            return of(input, settings).with(overrides);
        }
        Path sheet = overrides.times().get();
        MeasuredTimes measured = MeasuredTimes.read(environment.path(sheet), sheet.toString());
        SheetSettings times = SheetSettings.of(measured, timed(opened, settings));
        List<Setting> both =
                Stream.concat(times.settings().stream(), settings.stream()).toList();
        Scenario timed = of(input, both);
        return new Scenario(
                        opened,
                        timed.settings(),
                        timed.request(),
                        Stream.of(
                                        timed.warnings().stream(),
                                        times.warnings().stream(),
                                        opened.givenUp(both).stream()
                                                .map(path -> sheet + " has times of " + path
                                                        + ", which are not used: it is given another time."))
                                .flatMap(texts -> texts)
                                .toList(),
                        timed.handover(),
                        timed.fingerprint())
                .with(overrides);
    }

    /** The work whose times were measured: that of {@code file} as written; only where it cannot be run as it is, with what is set. */
    private static CoilChange timed(ScenarioFile file, List<Setting> settings) {
        ScenarioReading written = file.read();
        ScenarioReading known = written instanceof ScenarioReading.Accepted ? written : file.with(settings);
        if (known instanceof ScenarioReading.Accepted accepted) {
            return accepted.request().line().change();
        }
        throw new BadInputException(refusal(file, settings, known));
    }

    private static Scenario of(Opened input, List<Setting> settings) {
        return of(input.file(), settings, input.fingerprint());
    }

    private static Scenario of(ScenarioFile file, List<Setting> settings, Supplier<String> fingerprint) {
        ScenarioReading reading = file.with(settings);
        if (reading instanceof ScenarioReading.Accepted accepted) {
            return new Scenario(
                    file,
                    settings,
                    accepted.request(),
                    texts(accepted.warnings(), settings).toList(),
                    accepted.handover(),
                    fingerprint.get());
        }
        throw new BadInputException(refusal(file, settings, reading));
    }

    /** What is wrong with a scenario that cannot be run, and with its alternatives; nothing with one that can. */
    private static List<String> refusal(ScenarioFile file, List<Setting> settings, ScenarioReading reading) {
        if (!(reading instanceof ScenarioReading.Refused refused)) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(texts(
                        Stream.concat(
                                        refused.problems().stream(),
                                        file.problemsOfAlternatives(settings, refused).stream())
                                .sorted(Problem.BY_PLACE)
                                .toList(),
                        settings)
                .toList());
        if (refused.further() > 0) {
            lines.add("and " + refused.further() + " more problems");
        }
        texts(refused.warnings(), settings).map(Scenario::asWarning).forEach(lines::add);
        return lines;
    }

    /** Under a figure such as the rated speed, values of the file may be wrong that no option names. */
    private static Stream<String> texts(List<Problem> problems, List<Setting> settings) {
        return texts(problems.stream()
                .map(problem -> problem.file().equals(RunOverrides.SET)
                                && settings.stream().noneMatch(setting -> isOnOneWay(setting.path(), problem.path()))
                        ? problem.at(Place.whole("with the options given,"), problem.path())
                        : problem)
                .toList());
    }

    private static boolean isOnOneWay(String path, String other) {
        return path.startsWith(other) || other.startsWith(path);
    }

    /**
     * What {@code run} gives. The error of a run that cannot go on names the place in the file that is to be mended, or the file.
     *
     * @throws BadInputException when it cannot go on
     */
    <T> T running(Supplier<T> run) {
        try {
            return run.get();
        } catch (StudyException e) {
            String part = e.getCause() instanceof SimulationException cause
                    ? cause.part().orElse("")
                    : "";
            Place place = file.place(part);
            throw new BadInputException(place + (place.line() == 0 ? ": " : " ") + e.getMessage());
        }
    }

    /**
     * The target, for what looks for something that is enough.
     *
     * @throws BadInputException when it asks for all coil changes; it names the place
     */
    double targetBelowAll() {
        try {
            return Share.targetBelowAll(request.run().target());
        } catch (StudyException e) {
            String path = "run.target";
            Place place = settings.stream()
                    .filter(setting -> setting.path().equals(path))
                    .map(setting -> setting.value().place())
                    .reduce((first, last) -> last)
                    .orElseGet(() -> file.place(path));
            throw new BadInputException(place + " run." + e.getMessage());
        }
    }

    /** Where a result comes from; {@code date} as the user wants it printed, the scenario's by default. */
    Provenance provenance(@Nullable String date) {
        return new Provenance(
                ProgramVersion.text(),
                Optional.of(fingerprint),
                changes(),
                Optional.ofNullable(date).or(() -> handover.cover().date()));
    }

    /** What was set otherwise than the file says, as it was run, and what made room for it. */
    private List<String> changes() {
        ScenarioFile run = file.saying(settings);
        return Stream.concat(
                        file.holding(settings).stream().flatMap(setting -> change(setting, run).stream()),
                        file.sharesBeside(settings).stream()
                                .map(path -> change(path, run.said(path).orElse(""), file.said(path))))
                .toList();
    }

    /** What {@code setting} changed, as a file would have it; empty where the file says the same. */
    private Optional<String> change(Setting setting, ScenarioFile run) {
        Optional<String> before = file.said(setting.path());
        // What is set later may have changed it again.
        Optional<String> after = LineFigure.called(setting.path()).isPresent()
                ? Optional.empty()
                : run.said(setting.path())
                        .filter(text -> !text.equals(setting.value().text()));
        boolean isSame = after.isPresent()
                ? after.equals(before)
                : number(setting)
                                .filter(number -> number.isPresent(setting.value()))
                                .isPresent()
                        || before.filter(setting.value().text()::equals).isPresent();
        return isSame
                ? Optional.empty()
                : Optional.of(change(setting.path(), after.orElseGet(() -> written(setting)), before));
    }

    private static String change(String path, String now, Optional<String> before) {
        return path + " = " + shortened(now)
                + before.map(text -> " instead of " + shortened(text)).orElse("");
    }

    private Optional<Input> number(Setting setting) {
        return file.input(setting, List.of(), new Problems());
    }

    /** The value with a blank before its unit. */
    private String written(Setting setting) {
        return number(setting)
                .flatMap(number -> number.numeric().written(setting.value()))
                .orElse(setting.value().text());
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + " ...";
    }

    /** Every number of the line, as it is run, with where it came from as far as that was said. */
    List<GivenValue> givenValues() {
        return GivenValues.of(file, file.saying(settings), handover);
    }

    private static String fingerprint(Path file) {
        try {
            return Fingerprint.of(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + e.getMessage() + "). Check the disk.");
        }
    }

    static Stream<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::toString);
    }

    /** How a warning differs from a problem. */
    static String asWarning(String text) {
        return "warning: " + text;
    }

    /**
     * The same without the alternative that {@code overrides} names: with what else they say.
     *
     * @throws BadInputException when that cannot be run
     */
    Scenario asWritten(RunOverrides overrides) {
        Optional<List<Setting>> chosen = overrides.alternative().flatMap(file::alternative);
        if (chosen.isEmpty()) {
            return this;
        }
        List<Setting> rest = settings.stream()
                .filter(setting -> !chosen.get().contains(setting))
                .toList();
        return of(file, rest, () -> fingerprint).with(overrides);
    }

    /**
     * The same with what the command line says otherwise.
     *
     * @throws BadInputException when the two together cannot be run
     */
    private Scenario with(RunOverrides overrides) {
        SimulationRequest changed = request.with(overrides.plan(request.run()));
        List<Message> before = LineCheck.check(request);
        List<Message> after = LineCheck.check(changed);
        List<Message> found =
                after.stream().filter(message -> !before.contains(message)).toList();
        List<String> mended = before.stream()
                .filter(message -> !after.contains(message))
                .map(Message::text)
                .toList();
        List<String> errors = found.stream()
                .filter(Message::isError)
                .map(Scenario::onCommandLine)
                .toList();
        if (!errors.isEmpty()) {
            throw new BadInputException(errors);
        }
        SimulationRequest shown = changed.with(overrides.units(changed.resultsIn()));
        return new Scenario(
                file,
                settings,
                shown,
                Stream.concat(
                                warnings.stream()
                                        .filter(warning -> mended.stream().noneMatch(warning::endsWith)),
                                found.stream().map(Scenario::onCommandLine))
                        .toList(),
                handover,
                fingerprint);
    }

    static String onCommandLine(Message message) {
        return "with the options given, " + message.text();
    }
}
