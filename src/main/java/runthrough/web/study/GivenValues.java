package runthrough.web.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import runthrough.plant.handover.Handover;
import runthrough.report.document.GivenValue;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;

/** Every number of a line for its document, with where it came from as far as that was said. */
public final class GivenValues {
    private GivenValues() {}

    /**
     * The numbers of {@code file}.
     *
     * @param handover what the file says for its document
     * @param set what an input was set to for this run, as a file would have it; empty where it was not
     */
    public static List<GivenValue> of(ScenarioFile file, Handover handover, Function<Input, Optional<String>> set) {
        return file.inputs().stream()
                .filter(input -> input.origin() != Input.Origin.FIGURE)
                .map(input -> of(input, handover, set.apply(input)))
                .toList();
    }

    private static GivenValue of(Input input, Handover handover, Optional<String> set) {
        String from = set.isPresent()
                ? "set for this run"
                : handover.originOf(input.path())
                        .orElse(
                                input.origin() == Input.Origin.DEFAULT
                                        ? "not given: the program's default"
                                        : "not stated");
        return new GivenValue(input.path(), set.orElse(input.text()), from);
    }
}
