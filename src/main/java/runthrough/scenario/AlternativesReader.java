package runthrough.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** Reads each alternative as the scenario with the values that it changes, and reports what is wrong with it and where. */
final class AlternativesReader {
    private static final Comparator<Problem> BY_PLACE =
            Comparator.comparing(Problem::file).thenComparing(Problem::line).thenComparing(Problem::column);

    /** How a line's check says that a practice makes no use of something. */
    private static final String NO_PART = "has no part in";

    private final ScenarioFile file;
    private final List<Setting> settings;
    private final Raw.Mapping root;
    private final List<Problem> problems = new ArrayList<>();
    private final List<AlternativesReading.Refused> refusals = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();

    /** A reader of alternatives in {@code root}, each with {@code settings} besides. */
    AlternativesReader(ScenarioFile file, Raw.Mapping root, List<Setting> settings) {
        this.file = file;
        this.root = root;
        this.settings = List.copyOf(settings);
    }

    AlternativesReading read(ScenarioReading.Accepted written) {
        List<AlternativeKeys.Written> named = named(root);
        List<Alternative> all = new ArrayList<>(List.of(Alternative.asWritten(written.request())));
        named.forEach(one -> read(one, written).ifPresent(all::add));
        String today = today(
                Stream.concat(Stream.of(Alternative.AS_WRITTEN), named.stream().map(AlternativeKeys.Written::name))
                        .toList());
        return new AlternativesReading(all, today, sorted(problems), refusals, sorted(warnings));
    }

    /** The alternatives of a scenario, none if it has none or if they cannot be read. */
    static List<AlternativeKeys.Written> named(Raw.Mapping root) {
        return root.find(ScenarioKeys.ALTERNATIVES.name())
                .flatMap(raw -> ScenarioKeys.ALTERNATIVES
                        .shape()
                        .read(raw, Context.top(new Problems()).at(ScenarioKeys.ALTERNATIVES)))
                .orElse(List.of());
    }

    private Optional<Alternative> read(AlternativeKeys.Written one, ScenarioReading.Accepted written) {
        List<Setting> own = one.settings();
        Set<String> changed = new HashSet<>();
        own.forEach(setting -> changed.add(setting.path()));
        ScenarioReading reading = file.with(Stream.concat(
                        settings.stream().filter(setting -> !changed.contains(setting.path())), own.stream())
                .toList());
        if (reading instanceof ScenarioReading.Refused refused) {
            List<Problem> named = refused.problems().stream()
                    .map(problem -> named(problem, one))
                    .toList();
            problems.addAll(named);
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
            problems.add(Problem.at(
                    one.place(),
                    ScenarioKeys.ALTERNATIVES.name() + "." + one.name(),
                    "",
                    "changes nothing: the scenario as written has these values already, or its practice makes no use"
                            + " of them",
                    "Change something, or leave it out."));
            return Optional.empty();
        }
        return Optional.of(new Alternative(one.name(), accepted.request()));
    }

    private static boolean isSame(SimulationRequest one, SimulationRequest other) {
        return one.line().equals(other.line()) && one.run().equals(other.run());
    }

    private static String why(ScenarioReading.Refused refused) {
        return refused.problems().stream()
                .map(problem -> problem.path()
                        + (problem.value().isEmpty() ? "; " : " = " + problem.value() + "; ")
                        + problem.rule())
                .collect(Collectors.joining(". "));
    }

    /** A problem with its alternative named; what is not wrong in the alternative itself is reported at the alternative's name. */
    private static Problem named(Problem problem, AlternativeKeys.Written one) {
        String path = "alternative \"" + one.name() + "\"" + (problem.path().isEmpty() ? "" : ": " + problem.path());
        return isWithin(problem, one)
                ? problem.at(new Place(problem.file(), problem.line(), problem.column()), path)
                : problem.at(one.place(), path + (problem.line() > 0 ? " (line " + problem.line() + ")" : ""));
    }

    /** Whether it is only that another practice makes no use of what the scenario as written says. */
    private static boolean isLeftOver(Problem warning, AlternativeKeys.Written one) {
        return warning.rule().contains(NO_PART) && !isWithin(warning, one);
    }

    private static boolean isWithin(Problem problem, AlternativeKeys.Written one) {
        return places(one.values())
                .anyMatch(place -> place.line() == problem.line()
                        && place.column() == problem.column()
                        && place.file().equals(problem.file()));
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

    private String today(List<String> names) {
        Optional<Raw> given = root.find(ScenarioKeys.TODAY.name());
        String today = given.map(raw -> raw.shown().strip()).orElse(Alternative.AS_WRITTEN);
        problems.addAll(new PricedAlternatives(root, names).problems(given.map(raw -> today)));
        if (!names.contains(today)) {
            problems.add(Problem.at(
                    given.orElseThrow().place(),
                    ScenarioKeys.TODAY.name(),
                    today,
                    "is not the name of an alternative of this scenario",
                    Nearest.remedy(today, names)));
        }
        return today;
    }

    private static List<Problem> sorted(List<Problem> unsorted) {
        return unsorted.stream().sorted(BY_PLACE).toList();
    }
}
