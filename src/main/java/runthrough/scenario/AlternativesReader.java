package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** Reads each alternative as the scenario with the values that it changes, and reports what is wrong with it and where. */
final class AlternativesReader {
    /** How a line's check says that a practice makes no use of something. */
    private static final String NO_PART = "has no part in";

    private final ScenarioFile file;
    private final List<Setting> settings;
    private final Raw.Mapping root;
    private final Problems problems = new Problems();
    private final List<AlternativesReading.Refused> refusals = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();

    /** A reader of alternatives in {@code root}, each with {@code settings} besides. */
    AlternativesReader(ScenarioFile file, Raw.Mapping root, List<Setting> settings) {
        this.file = file;
        this.root = root;
        this.settings = List.copyOf(settings);
    }

    AlternativesReading read(ScenarioReading.Accepted written) {
        List<Alternative> all = new ArrayList<>(List.of(Alternative.asWritten(written.request())));
        int unread = 0;
        for (AlternativeKeys.Written one : named(root)) {
            if (problems.isFull()) {
                unread++;
            } else {
                read(one, written).ifPresent(all::add);
            }
        }
        checkNames();
        String today = root.find(ScenarioKeys.TODAY.name())
                .map(raw -> raw.shown().strip())
                .filter(name -> settings.isEmpty()
                        || all.stream().anyMatch(one -> one.name().equals(name)))
                .orElse(Alternative.AS_WRITTEN);
        return new AlternativesReading(
                all, today, problems.errors(), problems.further() + unread > 0, refusals, sorted(warnings));
    }

    /**
     * What is wrong with the alternatives of a scenario that is refused itself, but for what rests on that.
     */
    List<Problem> problems(ScenarioReading.Refused written) {
        for (AlternativeKeys.Written one : named(root)) {
            if (problems.isFull()) {
                break;
            }
            if (one.settings().stream().allMatch(this::isWritten)) {
                tellOfNoChange(one);
            }
            Set<Place> astray = astray(one);
            refused(file.withAsOneOfSeveral(besides(one))).stream()
                    .filter(problem -> written.problems().stream().noneMatch(known -> isOfSame(known, problem)))
                    .filter(problem -> !astray.contains(place(problem)))
                    .forEach(problem -> problems.error(named(problem, one)));
        }
        checkNames();
        return problems.errors();
    }

    /** What alternatives name that is not there; nothing is read of what they make of the line. */
    List<Problem> astray() {
        for (AlternativeKeys.Written one : named(root)) {
            Problems found = new Problems();
            new WrittenScenario(root).applied(one.settings(), new ArrayList<>(), found);
            found.errors().forEach(problem -> problems.error(named(problem, one)));
        }
        return problems.errors();
    }

    private static List<Problem> refused(ScenarioReading reading) {
        return reading instanceof ScenarioReading.Refused refused ? refused.problems() : List.of();
    }

    private static boolean isOfSame(Problem one, Problem other) {
        return one.path().equals(other.path()) && place(one).equals(place(other));
    }

    /** Where {@code one} names parts that may be there, as all of their names are, but in a part that is wrong. */
    private Set<Place> astray(AlternativeKeys.Written one) {
        return one.settings().stream()
                .filter(setting -> PathGuess.isAstray(setting.path(), root))
                .map(Setting::place)
                .collect(Collectors.toSet());
    }

    /** The alternatives of a scenario that can be read, none if it has none. */
    static List<AlternativeKeys.Written> named(Raw.Mapping root) {
        return root.find(ScenarioKeys.ALTERNATIVES.name())
                .filter(raw -> raw instanceof Raw.Mapping)
                .map(raw -> (Raw.Mapping) raw)
                .filter(Items::areFew)
                .map(mapping -> AlternativeKeys.readable(
                        mapping, Context.top(new Problems()).at(ScenarioKeys.ALTERNATIVES)))
                .orElse(List.of());
    }

    private Optional<Alternative> read(AlternativeKeys.Written one, ScenarioReading.Accepted written) {
        List<Setting> besides = besides(one);
        ScenarioReading reading = file.withAsOneOfSeveral(besides);
        if (reading instanceof ScenarioReading.Refused refused) {
            List<Problem> named = refused.problems().stream()
                    .map(problem -> named(problem, one))
                    .toList();
            named.forEach(problems::error);
            if (refused.described()) {
                refusals.add(new AlternativesReading.Refused(one.name(), why(refused), named));
            }
            return Optional.empty();
        }
        ScenarioReading.Accepted accepted = (ScenarioReading.Accepted) reading;
        accepted.warnings().stream()
                .filter(warning -> !written.warnings().contains(warning) && !isLeftOver(warning, one))
                .forEach(warning -> warnings.add(named(warning, one)));
        if (isSame(accepted.request(), written.request())) {
            tellOfNoChange(one);
            return Optional.empty();
        }
        Set<String> known = file.givenUp(settings);
        file.givenUp(besides).stream()
                .filter(path -> !known.contains(path))
                .forEach(path -> warnings.add(named(givenUp(path, one.place()), one)));
        return Optional.of(new Alternative(one.name(), accepted.request()));
    }

    private void tellOfNoChange(AlternativeKeys.Written one) {
        String path = ScenarioKeys.ALTERNATIVES.name() + "." + one.name();
        if (settings.isEmpty()) {
            problems.error(Problem.at(
                    one.place(),
                    path,
                    "",
                    "changes nothing: the scenario as written has these values already, or its practice makes no use of"
                            + " them",
                    "Change something, or leave it out."));
        } else {
            warnings.add(Problem.at(
                    one.place(), path, "", "changes nothing of what is set for this run", "It is left out."));
        }
    }

    /** Whether {@code setting} is what is written there, whatever else is wrong. */
    private boolean isWritten(Setting setting) {
        return Route.find(ScenarioKeys.SCENARIO, root, setting.path())
                .map(Route::part)
                .filter(part -> isSame(part.shape(), part.written(), setting.value()))
                .isPresent();
    }

    private static <T> boolean isSame(Shape<T> shape, Optional<Raw> written, Raw value) {
        Context nowhere = Context.top(new Problems());
        Optional<T> wanted = shape.read(value, nowhere);
        return wanted.isPresent()
                && written.flatMap(raw -> shape.read(raw, nowhere)).equals(wanted);
    }

    private static Problem givenUp(String path, Place place) {
        return Problem.at(
                place,
                path,
                "",
                "has measured times, which are not used: it is given another time",
                "It goes by what the scenario says.");
    }

    /** What {@code one} sets, with what is set besides. */
    private List<Setting> besides(AlternativeKeys.Written one) {
        List<Setting> own = one.settings();
        List<Setting> others =
                settings.stream().filter(setting -> !setting.isMeasured()).toList();
        return Stream.of(
                        settings.stream().filter(Setting::isMeasured),
                        own.stream(),
                        file.replacing(own, others).stream().filter(setting -> !own.contains(setting)))
                .flatMap(all -> all)
                .toList();
    }

    private static boolean isSame(SimulationRequest one, SimulationRequest other) {
        return one.line().equals(other.line()) && one.run().equals(other.run());
    }

    private static String why(ScenarioReading.Refused refused) {
        return refused.problems().stream().map(Problem::reason).collect(Collectors.joining(". "));
    }

    /** A problem with its alternative named; what is not wrong in the alternative itself is reported at the alternative's name. */
    private static Problem named(Problem problem, AlternativeKeys.Written one) {
        String path = "alternative \"" + one.name() + "\"" + (problem.path().isEmpty() ? "" : ": " + problem.path());
        return isWithin(problem, one)
                ? problem.at(place(problem), path)
                : problem.at(one.place(), path + (problem.line() > 0 ? " (line " + problem.line() + ")" : ""));
    }

    /** Whether it is only that another practice makes no use of what the scenario as written says. */
    private static boolean isLeftOver(Problem warning, AlternativeKeys.Written one) {
        return warning.rule().contains(NO_PART) && !isWithin(warning, one);
    }

    private static boolean isWithin(Problem problem, AlternativeKeys.Written one) {
        return places(one.values()).anyMatch(place(problem)::equals);
    }

    private static Place place(Problem problem) {
        return new Place(problem.file(), problem.line(), problem.column());
    }

    private static Stream<Place> places(Raw raw) {
        Stream<Place> within = Stream.empty();
        if (raw instanceof Raw.Mapping mapping) {
            within = mapping.entries().stream()
                    .flatMap(entry -> Stream.concat(Stream.of(entry.place()), places(entry.value())));
        } else if (raw instanceof Raw.Sequence sequence) {
            within = sequence.items().stream().flatMap(AlternativesReader::places);
        }
        return Stream.concat(Stream.of(raw.place()), within);
    }

    /** Reports names of alternatives that the scenario does not have; as far as it is known which it has. */
    private void checkNames() {
        Optional<List<String>> known = names();
        Optional<Raw> given = written(ScenarioKeys.TODAY);
        Optional<String> today = given.flatMap(raw -> ScenarioKeys.TODAY
                .shape()
                .read(raw, Context.top(new Problems()))
                .map(String::strip));
        if (known.isEmpty()) {
            return;
        }
        List<String> names = known.get();
        new PricedAlternatives(root, names)
                .problems(today, isLeftOut(ScenarioKeys.TODAY))
                .forEach(problems::error);
        today.filter(name -> !names.contains(name))
                .ifPresent(name -> problems.error(Problem.at(
                        given.orElseThrow().place(),
                        ScenarioKeys.TODAY.name(),
                        name,
                        "is not the name of an alternative of this scenario",
                        Nearest.remedy(name, names))));
    }

    /** The names of all alternatives, of those that are wrong too; empty where they are not known. */
    private Optional<List<String>> names() {
        if (isLeftOut(ScenarioKeys.ALTERNATIVES)) {
            return Optional.of(List.of(Alternative.AS_WRITTEN));
        }
        return written(ScenarioKeys.ALTERNATIVES)
                .filter(raw -> raw instanceof Raw.Mapping)
                .map(raw -> Stream.concat(
                                Stream.of(Alternative.AS_WRITTEN),
                                ((Raw.Mapping) raw)
                                        .entries().stream()
                                                .map(entry -> entry.key().strip()))
                        .toList());
    }

    /** What is written under {@code key}; empty where nothing is, or two things are. */
    private Optional<Raw> written(Key<?> key) {
        List<Raw> all = root.entries().stream()
                .filter(entry -> entry.key().equals(key.name()))
                .map(Raw.Entry::value)
                .toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private boolean isLeftOut(Key<?> key) {
        return root.find(key.name()).isEmpty()
                && ScenarioKeys.SCENARIO.perhaps(key, root).isEmpty();
    }

    private static List<Problem> sorted(List<Problem> unsorted) {
        return unsorted.stream().sorted(Problem.BY_PLACE).toList();
    }
}
