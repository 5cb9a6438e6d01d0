package runthrough.web;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.LineFigure;
import runthrough.plant.handover.Handover;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.WrittenElement;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.YamlEdit;

/** Values that a scenario says are assumed, under {@code origins}: one that a person states is none any longer. */
final class Assumptions {
    private static final String WORD = "assumption";
    private static final String STATED = "stated on the page";
    private static final String ORIGINS = "origins";

    /** A number of a distribution: what it is stated of is the distribution. */
    private static final Pattern NUMBER =
            Pattern.compile("\\.(triangular|uniform|normal|lognormal|gamma|weibull)\\.[^.]*$");

    private static final Pattern ELEMENT = Pattern.compile("coil-change\\.(prepare|tail|join)\\[(\\d{1,3})]");

    private Assumptions() {}

    /** Whether {@code origin}, as a scenario says where a value came from, is an assumption. */
    static boolean is(String origin) {
        return origin.startsWith(WORD);
    }

    /**
     * {@code after}, which came of {@code changes} of {@code before}: its origins say which assumptions were replaced, and nothing of
     * what is no longer there.
     */
    static ScenarioText replaced(ScenarioText before, ScenarioText after, List<ScenarioText.Change> changes) {
        return stated(before, withoutLost(after), changes);
    }

    /** {@code text} without origins of what it does not have. */
    static ScenarioText withoutLost(ScenarioText text) {
        Set<String> lost = text.open().read() instanceof ScenarioReading.Refused refused
                ? refused.problems().stream()
                        .map(Problem::path)
                        .filter(path -> path.startsWith(ORIGINS + "."))
                        .map(path -> path.substring(ORIGINS.length() + 1))
                        .collect(Collectors.toSet())
                : Set.of();
        if (lost.isEmpty()) {
            return text;
        }
        Raw.Mapping root = (Raw.Mapping) text.raw().orElseThrow();
        Raw.Mapping origins = (Raw.Mapping) root.find(ORIGINS).orElseThrow();
        return new ScenarioText(
                text.file(), YamlEdit.apply(text.text(), root, root.with(ORIGINS, origins.without(lost))));
    }

    private static ScenarioText stated(ScenarioText before, ScenarioText after, List<ScenarioText.Change> changes) {
        if (!after.text().contains(WORD) || !(after.open().read() instanceof ScenarioReading.Accepted now)) {
            return after;
        }
        Raw.Mapping root = (Raw.Mapping) after.raw().orElseThrow();
        Optional<Raw.Mapping> origins = root.find(ORIGINS).map(Raw.Mapping.class::cast);
        Set<String> stated = Stream.concat(
                        different(before, after), changes.stream().flatMap(change -> named(change, root).stream()))
                .filter(path -> isAssumed(path, now.handover()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (stated.isEmpty() || origins.isEmpty()) {
            return after;
        }
        Raw.Mapping said = origins.get();
        for (String path : stated) {
            said = said.with(path, new Raw.Scalar(STATED, said.place()));
        }
        return new ScenarioText(after.file(), YamlEdit.apply(after.text(), root, root.with(ORIGINS, said)));
    }

    private static boolean isAssumed(String path, Handover handover) {
        return handover.originOf(path).filter(Assumptions::is).isPresent();
    }

    /** Paths of what has another value than before; one that was not there, as under another name, has none. */
    private static Stream<String> different(ScenarioText before, ScenarioText after) {
        Map<String, String> was = before.open().inputs().stream()
                .collect(Collectors.toMap(Input::path, Input::text, (first, second) -> second));
        return after.open().inputs().stream()
                .filter(input -> input.origin() == Input.Origin.WRITTEN)
                .filter(input -> !was.getOrDefault(input.path(), input.text()).equals(input.text()))
                .map(input -> NUMBER.matcher(input.path()).replaceFirst(""));
    }

    /** Path of what {@code change} states: measured values are no numbers that could be compared one by one. */
    private static Optional<String> named(ScenarioText.Change change, Raw.Mapping root) {
        if (change instanceof ScenarioText.Change.Retime retime) {
            Matcher element = ELEMENT.matcher(retime.path());
            return element.matches()
                    ? element(root, element.group(1), Integer.parseInt(element.group(2)))
                            .map(name -> "coil-change." + element.group(1) + name)
                    : Optional.empty();
        }
        boolean isPart = change instanceof ScenarioText.Change.Write
                && change.path().contains(".")
                && !change.path().contains("[")
                && LineFigure.called(change.path()).isEmpty();
        return isPart ? Optional.of(change.path()) : Optional.empty();
    }

    /** What a path calls an element of a list: its name, or its number where others have the same name. */
    private static Optional<String> element(Raw.Mapping root, String list, int number) {
        List<Optional<String>> names = root.find("coil-change")
                .map(Raw.Mapping.class::cast)
                .flatMap(change -> change.find(list))
                .filter(Raw.Sequence.class::isInstance)
                .map(items -> ((Raw.Sequence) items)
                        .items().stream()
                                .map(item -> WrittenElement.of(item).map(WrittenElement::name))
                                .toList())
                .orElse(List.of());
        return Optional.of(number)
                .filter(any -> any >= 1 && any <= names.size())
                .flatMap(any -> names.get(any - 1))
                .map(name -> Collections.frequency(names, Optional.of(name)) == 1 ? "." + name : "[" + number + "]");
    }
}
