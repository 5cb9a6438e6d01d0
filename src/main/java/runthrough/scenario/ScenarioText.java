package runthrough.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Dimension;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.source.YamlEdit;
import runthrough.scenario.source.YamlText;

/**
 * A scenario as text that is changed part by part, as by somebody who edits it with care: what is not changed stays to the
 * letter, comments included.
 *
 * @param file whose name problems name, and that other files are relative to
 * @param text of the scenario
 */
public record ScenarioText(Path file, String text) {
    private static final String STANDING_WORK = "coil-change\\.(tail|join)\\..*";
    private static final String RETHREAD = "coil-change\\.rethread(\\..*)?";
    private static final String SPEEDS = "process\\.speed|coils?\\..*process-speed";

    /** Of a number that was worked out from others. */
    private static final int DIGITS = 8;

    private static final Pattern ITEM = Pattern.compile("(.*)\\[(\\d+)]");

    /**
     * A change of one part.
     *
     * @param path of the part, as in {@link Setting}, or of a {@link LineFigure}: then what is behind it is changed
     * @param value as it would stand in the file; empty to remove an item of a list
     */
    public record Change(String path, Optional<String> value) {}

    /** What came of changes: the text with them, or what is wrong with them. */
    public record Changed(ScenarioText text, List<Problem> problems) {
        public Changed {
            problems = List.copyOf(problems);
        }
    }

    /** The scenario, opened for reading. */
    public ScenarioFile open() {
        return ScenarioFile.of(file, text);
    }

    /** The text with {@code changes} written into it, one after the other; unchanged when any of them cannot be made. */
    public Changed with(List<Change> changes) {
        Problems problems = new Problems();
        ScenarioText changed = this;
        for (Change change : changes) {
            changed = changed.with(change, problems);
        }
        return problems.none() ? new Changed(changed, List.of()) : new Changed(this, problems.errors());
    }

    /** What the text says, not yet understood; empty when it is no YAML. */
    public Optional<Raw> raw() {
        return YamlText.read(new TextFile(file.toString(), text), new Problems());
    }

    private ScenarioText with(Change change, Problems problems) {
        Optional<Raw> root = YamlText.read(new TextFile(file.toString(), text), problems);
        if (root.isEmpty()) {
            return this;
        }
        if (change.value.isEmpty()) {
            return without(change.path, root.get(), problems);
        }
        Optional<LineFigure> figure = LineFigure.called(change.path);
        if (figure.isPresent()) {
            return withFigure(figure.get(), change, problems);
        }
        Optional<Setting> setting = Setting.written(change.path, change.value.get(), change.path, problems);
        return setting.map(asked -> with(asked, root.get(), problems)).orElse(this);
    }

    private ScenarioText with(Setting setting, Raw root, Problems problems) {
        Optional<Route> route = Route.find(ScenarioKeys.SCENARIO, root, setting.path());
        if (route.isEmpty()) {
            tell(open().with(List.of(setting)), problems);
            return this;
        }
        Raw after = route.get().part().put().apply(setting.value());
        return new ScenarioText(file, YamlEdit.apply(text, root, after));
    }

    private static void tell(ScenarioReading reading, Problems problems) {
        if (reading instanceof ScenarioReading.Refused refused) {
            refused.problems()
                    .forEach(problem -> problems.error(
                            new Place(problem.file(), problem.line(), problem.column()),
                            problem.path(),
                            problem.value(),
                            problem.rule(),
                            problem.remedy()));
        }
    }

    private ScenarioText without(String path, Raw root, Problems problems) {
        Matcher item = ITEM.matcher(path);
        Optional<Route> list =
                item.matches() ? Route.find(ScenarioKeys.SCENARIO, root, item.group(1)) : Optional.empty();
        Optional<Raw> written = list.flatMap(route -> route.part().written());
        if (written.isPresent() && written.get() instanceof Raw.Sequence sequence) {
            List<Raw> items = new ArrayList<>(sequence.items());
            int number = Integer.parseInt(item.group(2));
            if (number >= 1 && number <= items.size()) {
                items.remove(number - 1);
                Raw after = list.orElseThrow().part().put().apply(new Raw.Sequence(items, sequence.place()));
                return new ScenarioText(file, YamlEdit.apply(text, root, after));
            }
        }
        problems.error(root.place(), path, "", "is no item of a list", "Name one that is there.");
        return this;
    }

    /** Changes what is behind a figure of the line. */
    private ScenarioText withFigure(LineFigure figure, Change change, Problems problems) {
        Optional<Setting> asked = Setting.written(change.path, change.value.orElseThrow(), change.path, problems);
        ScenarioFile opened = open();
        if (asked.isEmpty() || !(opened.read() instanceof ScenarioReading.Accepted now)) {
            return this;
        }
        if (!(opened.with(List.of(asked.get())) instanceof ScenarioReading.Accepted then)) {
            tell(opened.with(List.of(asked.get())), problems);
            return this;
        }
        List<Setting> behind = behind(figure, asked.get(), opened, now.request(), then.request());
        if (behind.isEmpty()) {
            problems.error(
                    asked.get().place(),
                    change.path,
                    change.value.get(),
                    "cannot be written into the scenario as one change",
                    "Change what is behind it.");
        }
        ScenarioText changed = this;
        for (Setting setting : behind) {
            changed = changed.with(setting, changed.raw().orElseThrow(), problems);
        }
        return changed;
    }

    private static List<Setting> behind(
            LineFigure figure, Setting asked, ScenarioFile opened, SimulationRequest now, SimulationRequest then) {
        return switch (figure) {
            case JOINT_CYCLE_TIME, RETHREAD_TIME -> {
                double least = figure.least(now.line());
                double factor = (figure.of(then.line()).orElseThrow() - least)
                        / (figure.of(now.line()).orElseThrow() - least);
                yield opened.inputs().stream()
                        .filter(input ->
                                input.path().matches(figure == LineFigure.RETHREAD_TIME ? RETHREAD : STANDING_WORK))
                        .flatMap(input -> scaled(input, factor).stream())
                        .toList();
            }
            case USABLE_CAPACITY -> {
                StorageForm.Adjustable adjusted =
                        then.line().accumulator().form().adjustable().orElseThrow();
                String key = switch (adjusted.measure()) {
                    case CAPACITY -> "accumulator.capacity";
                    case STROKE -> "accumulator.stroke";
                    case GREATEST_SAG -> "accumulator.greatest-sag";
                    case FULL_DIAMETER -> "accumulator.full-diameter";
                };
                yield opened.inputs().stream()
                        .filter(input -> input.path().equals(key))
                        .map(input -> rounded(input, adjusted.metres()))
                        .toList();
            }
            case RATED_SPEED -> {
                double factor = figure.of(then.line()).orElseThrow()
                        / figure.of(now.line()).orElseThrow();
                List<Input> speeds = opened.inputs().stream()
                        .filter(input -> input.path().matches(SPEEDS))
                        .toList();
                // A single speed is written as it was asked for.
                yield speeds.size() == 1
                        ? List.of(new Setting(speeds.get(0).path(), asked.value()))
                        : speeds.stream()
                                .map(input -> rounded(input, input.present().orElseThrow() * factor))
                                .toList();
            }
            case PREPARATION_TIME, COIL_LENGTH, COIL_MASS -> List.of();
        };
    }

    /** A number of an element of work, for an element that takes {@code factor} times as long. */
    private static Optional<Setting> scaled(Input input, double factor) {
        double value = input.present().orElseThrow();
        Dimension dimension = input.dimension().orElse(null);
        return dimension == Dimension.TIME
                ? Optional.of(rounded(input, value * factor))
                : dimension == Dimension.SPEED ? Optional.of(rounded(input, value / factor)) : Optional.empty();
    }

    /** {@code input} set to {@code si} in its own unit, with as many digits as a person might write. */
    private static Setting rounded(Input input, double si) {
        Unit unit = input.unit().orElseGet(() -> input.dimension().orElseThrow().base());
        String text = Numbers.text(unit.fromSi(si), DIGITS) + " " + unit.symbol();
        return new Setting(input.path(), new Raw.Scalar(text, Place.whole(input.path())));
    }
}
