package runthrough.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.Practice;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Dimension;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.scenario.coil.KnownCoils;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.part.MixShares;
import runthrough.scenario.source.ElementName;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.RenamedPaths;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.source.YamlEdit;
import runthrough.scenario.source.YamlText;

/**
 * A scenario as text that is changed part by part, as by somebody who edits it with care: what is not changed stays to the
 * letter, comments included.
 *
 * @param file whose name problems name, and that other files are relative to
 * @param text of the scenario
 * @param coils which are not read again for a text that leaves them as they are
 */
public record ScenarioText(Path file, String text, KnownCoils coils) {
    private static final String SPEEDS = "process\\.speed|coils?\\..*process-speed";

    /** Of a schedule, whose speeds stand in a file of their own. */
    private static final String SPEED_OR_FACTOR = "process\\.speed|coils\\.process-speed-factor";

    /** Of a number that was worked out from others. */
    private static final int DIGITS = 8;

    /** Digits of what a bound would refuse with fewer. */
    private static final int ALL_DIGITS = 15;

    private static final String ORIGINS = HandoverKeys.ORIGINS.name();

    private static final Pattern ITEM = Pattern.compile("(.*)\\[(\\d{1,9})]");

    /** A change of one part. */
    public sealed interface Change {
        /** Of the part, as in {@link Setting}. */
        String path();

        /**
         * Writes a value.
         *
         * @param path of the part, or of a {@link LineFigure}: then what is behind it is changed
         * @param value as it would stand in the file
         */
        record Write(String path, String value) implements Change {}

        /** Removes an item of a list. */
        record Remove(String path) implements Change {}

        /** Gives a work element another name. */
        record Rename(String path, String name) implements Change {}

        /**
         * Gives a work element another time; what else is said of it stays.
         *
         * @param key of how long it takes, such as {@code triangular}
         * @param value as it would stand in the file
         */
        record Retime(String path, String key, String value) implements Change {}
    }

    /** What came of changes: the text with them, or what is wrong with them. */
    public record Changed(ScenarioText text, List<Problem> problems) {
        public Changed {
            problems = List.copyOf(problems);
        }
    }

    /** Of which nothing was read. */
    public ScenarioText(Path file, String text) {
        this(file, text, new KnownCoils());
    }

    /** The scenario, opened for reading. */
    public ScenarioFile open() {
        return ScenarioFile.of(file, text, coils);
    }

    private ScenarioText saying(String other) {
        return new ScenarioText(file, other, coils);
    }

    /** The text with {@code changes} written into it, one after the other; unchanged when any of them cannot be made. */
    public Changed with(List<Change> changes) {
        Problems problems = new Problems();
        ScenarioText changed = with(changes, problems);
        return problems.none() ? new Changed(changed, List.of()) : new Changed(this, problems.errors());
    }

    /** The text, in which {@code changes} were made: the other shares of a mix in percent make room for those that were written. */
    public ScenarioText withRoom(List<Change> changes) {
        return raw().map(root -> saying(YamlEdit.apply(
                        text,
                        root,
                        new WrittenScenario(root)
                                .withRoom(List.of(changes.stream()
                                        .filter(Change.Write.class::isInstance)
                                        .flatMap(change -> share(change.path(), root).stream())
                                        .collect(Collectors.toSet())))
                                .root())))
                .orElse(this);
    }

    private static Optional<Raw> share(String path, Raw root) {
        return Route.find(ScenarioKeys.SCENARIO, root, path)
                .flatMap(route -> route.part().written())
                .flatMap(value -> MixShares.in(path, value));
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
        if (change instanceof Change.Write write) {
            return written(write, root.get(), problems);
        }
        Optional<Item> item = Item.at(change.path(), root.get())
                .filter(found ->
                        change instanceof Change.Remove || found.element().isPresent());
        if (item.isEmpty()) {
            problems.error(
                    root.get().place(),
                    change.path(),
                    "",
                    "is no item of a list, which alone can be removed, renamed or given another time",
                    "Name one that is there.");
            return this;
        }
        return saying(YamlEdit.apply(text, root.get(), changed(change, item.get(), problems)));
    }

    private static Raw changed(Change change, Item item, Problems problems) {
        if (change instanceof Change.Rename rename) {
            Optional<String> wrong = ElementName.wrong(rename.name())
                    .or(() -> item.isTaken(rename.name())
                            ? Optional.of("is what another element of " + item.path() + " is called")
                            : Optional.empty());
            if (wrong.isPresent()) {
                problems.error(item.written().place(), rename.path(), rename.name(), wrong.get(), "Call it otherwise.");
                return item.root();
            }
            WrittenElement element = item.element().orElseThrow();
            // So it is called wherever a path names it.
            return RenamedPaths.of(item.path(), item.place() + 1, element.name(), rename.name())
                    .in(item.with(element.named(rename.name())));
        }
        if (change instanceof Change.Retime retime) {
            return Setting.written(retime.path(), retime.value(), retime.path(), problems)
                    .map(time -> item.with(item.element().orElseThrow().timed(retime.key(), time.value())))
                    .orElse(item.root());
        }
        return removed(item);
    }

    /** The scenario without {@code item} and without origins of it; who names those behind it by their numbers still does. */
    private static Raw removed(Item item) {
        Raw.Mapping rest = (Raw.Mapping) item.without();
        Raw.Mapping known = rest.findMapping(ORIGINS)
                .map(origins -> rest.with(
                        ORIGINS,
                        origins.without(origins.entries().stream()
                                .map(Raw.Entry::key)
                                .filter(item::isNamedBy)
                                .collect(Collectors.toSet()))))
                .orElse(rest);
        return RenamedPaths.without(item.path(), item.place() + 1, item.name()).in(known);
    }

    /**
     * An item of a list.
     *
     * @param path of the list
     * @param list as a part of the scenario
     * @param written the list
     * @param place of the item in it, from 0
     * @param root the whole scenario
     */
    private record Item(String path, Route list, Raw.Sequence written, int place, Raw root) {
        /** The one that {@code path} names, such as {@code coil-change.join[2]}; empty where there is none. */
        static Optional<Item> at(String path, Raw root) {
            Matcher named = ITEM.matcher(path);
            if (!named.matches()) {
                return Optional.empty();
            }
            int place = Integer.parseInt(named.group(2)) - 1;
            return Route.find(ScenarioKeys.SCENARIO, root, named.group(1))
                    .flatMap(list -> list.part()
                            .written()
                            .filter(raw -> raw instanceof Raw.Sequence items
                                    && place >= 0
                                    && place < items.items().size())
                            .map(raw -> new Item(named.group(1), list, (Raw.Sequence) raw, place, root)));
        }

        /** The work element that it is; empty where it is none. */
        Optional<WrittenElement> element() {
            return WrittenElement.of(written.items().get(place));
        }

        /** Whether {@code text} is a path to it, by its name or its number. */
        boolean isNamedBy(String text) {
            return names().stream()
                    .map(name -> path + (name.startsWith("[") ? "" : ".") + name)
                    .anyMatch(one -> RenamedPaths.leadsTo(one, text.strip()));
        }

        /** What it alone is called; empty where it has no name, or others have the same. */
        Optional<String> name() {
            return names().stream().filter(name -> !name.startsWith("[")).findFirst();
        }

        private List<String> names() {
            return list.part().shape().parts(Optional.of(written)).get(place).names();
        }

        /** Whether another element of its list is called {@code name}. */
        boolean isTaken(String name) {
            return IntStream.range(0, written.items().size())
                    .filter(other -> other != place)
                    .mapToObj(other -> WrittenElement.of(written.items().get(other)))
                    .flatMap(Optional::stream)
                    .anyMatch(other -> other.name().equals(name.strip()));
        }

        /** The scenario with {@code other} in its place. */
        Raw with(Raw other) {
            return list.part().put().apply(written.with(place, other));
        }

        /** The scenario without it. */
        Raw without() {
            List<Raw> rest = new ArrayList<>(written.items());
            rest.remove(place);
            return list.part().put().apply(new Raw.Sequence(rest, written.place()));
        }
    }

    private ScenarioText written(Change.Write change, Raw root, Problems problems) {
        Optional<LineFigure> figure = LineFigure.called(change.path());
        if (figure.isPresent()) {
            return withFigure(figure.get(), change, problems);
        }
        Optional<Setting> setting = Setting.written(change.path(), change.value(), change.path(), problems);
        return setting.map(asked -> with(asked, root, problems)).orElse(this);
    }

    private ScenarioText with(Setting setting, Raw root, Problems problems) {
        Optional<Route> route = Route.find(ScenarioKeys.SCENARIO, root, setting.path());
        if (route.isEmpty()) {
            tell(open().with(List.of(setting)), problems);
            return this;
        }
        Raw after = route.get().part().put().apply(setting.value());
        return saying(YamlEdit.apply(text, root, after));
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

    /** Changes what is behind a figure of the line. */
    private ScenarioText withFigure(LineFigure figure, Change.Write change, Problems problems) {
        Optional<Setting> asked = Setting.written(change.path(), change.value(), change.path(), problems);
        ScenarioFile opened = open();
        if (asked.isEmpty() || !(opened.read() instanceof ScenarioReading.Accepted now)) {
            return this;
        }
        if (!(opened.with(List.of(asked.get())) instanceof ScenarioReading.Accepted then)) {
            tell(opened.with(List.of(asked.get())), problems);
            return this;
        }
        if (now.request().line().equals(then.request().line())) {
            return this;
        }
        List<Input> inputs = isOfJoints(figure) ? List.of() : opened.inputs();
        List<Change> behind = behind(figure, asked.get(), inputs, now.request(), then.request(), DIGITS);
        if (behind.isEmpty()) {
            problems.error(
                    asked.get().place(),
                    change.path(),
                    change.value(),
                    "cannot be written into the scenario as one change",
                    "Change what is behind it.");
        }
        List<Change> exact = behind(figure, asked.get(), inputs, now.request(), then.request(), ALL_DIGITS);
        ScenarioText changed = with(behind, problems);
        boolean runs = exact.equals(behind) || changed.open().read() instanceof ScenarioReading.Accepted;
        return runs ? changed : with(exact, problems);
    }

    private ScenarioText with(List<Change> changes, Problems problems) {
        ScenarioText changed = this;
        for (Change one : changes) {
            changed = changed.with(one, problems);
        }
        return changed;
    }

    /** Whether what is behind {@code figure} is added to the work, whatever else the file says. */
    private static boolean isOfJoints(LineFigure figure) {
        return figure == LineFigure.JOINT_CYCLE_TIME || figure == LineFigure.RETHREAD_TIME;
    }

    private static List<Change> behind(
            LineFigure figure,
            Setting asked,
            List<Input> inputs,
            SimulationRequest now,
            SimulationRequest then,
            int digits) {
        return switch (figure) {
            case JOINT_CYCLE_TIME, RETHREAD_TIME -> standing(now.line(), then.line());
            case USABLE_CAPACITY -> {
                StorageForm.Adjustable adjusted =
                        then.line().accumulator().form().adjustable().orElseThrow();
                String key = switch (adjusted.measure()) {
                    case CAPACITY -> "accumulator.capacity";
                    case STROKE -> "accumulator.stroke";
                    case GREATEST_SAG -> "accumulator.greatest-sag";
                    case FULL_DIAMETER -> "accumulator.full-diameter";
                };
                yield inputs.stream()
                        .filter(input -> input.path().equals(key))
                        .map(input -> rounded(input, adjusted.metres(), digits))
                        .toList();
            }
            case RATED_SPEED -> {
                double factor = figure.of(then.line()).orElseThrow()
                        / figure.of(now.line()).orElseThrow();
                boolean isScheduled = now.line().coilSource() instanceof CoilSource.Schedule
                        && now.line().coils().stream()
                                .anyMatch(coil -> coil.processSpeed().isPresent());
                List<Input> speeds = inputs.stream()
                        .filter(input -> input.path().matches(isScheduled ? SPEED_OR_FACTOR : SPEEDS))
                        .toList();
                // A single speed is written as it was asked for.
                yield speeds.size() == 1
                        ? List.of(new Change.Write(
                                speeds.get(0).path(), asked.value().text()))
                        : speeds.stream()
                                .map(input -> rounded(input, input.present().orElseThrow() * factor, digits))
                                .toList();
            }
            case PREPARATION_TIME, COIL_LENGTH, COIL_MASS -> List.of();
        };
    }

    /**
     * What makes the strip stand as long at every joint of {@code now} as at those of {@code then}: what is taken off every pass,
     * and what is added to it.
     */
    public static List<Change> standing(Line now, Line then) {
        List<Change> changes = new ArrayList<>();
        CoilChange before = now.change();
        CoilChange after = then.change();
        if (before.joinShorterBy() != after.joinShorterBy()) {
            changes.add(new Change.Write("coil-change.join-shorter-by", seconds(after.joinShorterBy())));
        }
        if (now.practice() instanceof Practice.Rethread was
                && then.practice() instanceof Practice.Rethread is
                && was.added() != is.added()) {
            changes.add(new Change.Write("coil-change.rethread.shift", seconds(is.added())));
        }
        if (before.added() != after.added()) {
            boolean isNew = before.added() == 0;
            String path = "coil-change.join["
                    + (isNew ? "+" : Integer.toString(before.join().size())) + "]";
            String value = seconds(after.added());
            changes.add(
                    after.added() == 0
                            ? new Change.Remove(path)
                            : new Change.Write(path, isNew ? "{" + CoilChange.ADDED + ": " + value + "}" : value));
        }
        return changes;
    }

    /** A time (s) as it would stand in the file. */
    public static String seconds(double time) {
        return Numbers.text(time, DIGITS) + " s";
    }

    /** {@code input} set to {@code si} in its own unit, with {@code digits} significant digits. */
    private static Change rounded(Input input, double si, int digits) {
        Optional<Unit> unit = input.unit().or(() -> input.dimension().map(Dimension::base));
        String text = Numbers.text(unit.map(own -> own.fromSi(si)).orElse(si), digits);
        return new Change.Write(
                input.path(), unit.map(own -> text + " " + own.symbol()).orElse(text));
    }
}
