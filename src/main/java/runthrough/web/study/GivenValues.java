package runthrough.web.study;

import java.util.List;
import runthrough.plant.handover.Handover;
import runthrough.report.document.GivenValue;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;

/** Every number of a line for its document, with where it came from as far as that was said. */
public final class GivenValues {
    private GivenValues() {}

    /**
     * The numbers of {@code run}, but for its figures, unless they were set.
     *
     * @param file as it is written
     * @param run the same, as it is run
     * @param handover what the file says for its document
     */
    public static List<GivenValue> of(ScenarioFile file, ScenarioFile run, Handover handover) {
        List<Input> written = file.inputs();
        return run.inputs().stream()
                .filter(input -> input.origin() != Input.Origin.FIGURE || run.isFigureSet(input.path()))
                .map(input -> of(input, handover, written.stream().noneMatch(before -> isSame(before, input))))
                .toList();
    }

    private static boolean isSame(Input one, Input other) {
        return one.path().equals(other.path()) && one.present().equals(other.present());
    }

    private static GivenValue of(Input input, Handover handover, boolean isSet) {
        String from = isSet
                ? "set for this run"
                : handover.originOf(input.path())
                        .orElse(
                                input.origin() == Input.Origin.DEFAULT
                                        ? "not given: the program's default"
                                        : "not stated");
        String text =
                isSet ? input.setTo(input.present().orElseThrow(), "").value().shown() : input.text();
        return new GivenValue(input.path(), text, from);
    }
}
