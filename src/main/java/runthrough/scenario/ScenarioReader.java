package runthrough.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import runthrough.plant.CoilSource;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.plant.handover.Handover;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** Reads a scenario into what was asked, or into everything that is wrong with it. */
final class ScenarioReader {

    private final Path file;
    private final KnownCoils coils;
    private final FigureSettings figures;
    private final Problems problems;
    private final Context top;
    private Handover handover = Handover.NONE;

    /**
     * A reader for one reading.
     *
     * @param file of the scenario; the names of other files are relative to it
     * @param coils which are not read again
     * @param figures of the line that are set
     * @param problems takes what is wrong
     */
    ScenarioReader(Path file, KnownCoils coils, FigureSettings figures, Problems problems) {
        this.file = file;
        this.coils = coils;
        this.figures = figures;
        this.problems = problems;
        this.top = Context.top(problems);
    }

    /** What {@code raw}, the whole scenario, asks. */
    Optional<SimulationRequest> request(Raw raw) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            problems.error(
                    raw.place(),
                    "",
                    raw.shown(),
                    "must be a group of keys such as title, coil, entry",
                    "Begin with a copy of a shipped scenario.");
            return Optional.empty();
        }
        Values scenario = ScenarioKeys.SCENARIO.readPartly(mapping, top);
        checkPractice(scenario);
        handover = HandoverKeys.handover(scenario, mapping, problems);
        Optional<CoilSourceReader.Found> found = new CoilSourceReader(file, coils, top).read(scenario);
        if (!problems.none() || found.isEmpty()) {
            return Optional.empty();
        }
        SimulationRequest written = request(scenario, found.get().coilSource());
        Optional<SimulationRequest> request = figures.apply(written, top);
        MessagePlaces places = new MessagePlaces(mapping, found.get().places());
        PracticeWord.unused(written.line().practice(), scenario, written.resultsIn())
                .forEach(message -> places.tell(message, problems));
        List<Message> ofWritten = LineCheck.check(written);
        request.filter(asked -> !asked.equals(written))
                .map(LineCheck::check)
                .orElse(ofWritten)
                .forEach(message -> {
                    boolean isOfFigures = !ofWritten.contains(message);
                    (isOfFigures ? places.at(figures.place()) : places).tell(message, problems);
                });
        return request;
    }

    /** What the scenario that was read last says for its document. */
    Handover handover() {
        return handover;
    }

    /** Reports keys that the practice needs and that are not there. */
    private void checkPractice(Values scenario) {
        boolean isPracticeWrong = !scenario.has(ScenarioKeys.PRACTICE) && isWritten(scenario, ScenarioKeys.PRACTICE);
        if (isPracticeWrong) {
            return;
        }
        PracticeWord practice = scenario.get(ScenarioKeys.PRACTICE);
        if (practice == PracticeWord.JOIN_WITH_ACCUMULATOR) {
            require(scenario, ScenarioKeys.ACCUMULATOR, top);
        }
        if (practice == PracticeWord.RETHREAD) {
            scenario.find(ScenarioKeys.CHANGE)
                    .ifPresent(change -> require(change, ChangeKeys.RETHREAD, top.at(ScenarioKeys.CHANGE)));
        } else {
            require(scenario, ScenarioKeys.ENTRY, top);
            scenario.find(ScenarioKeys.ENTRY)
                    .ifPresent(entry -> require(entry, EntryKeys.TOP_SPEED, top.at(ScenarioKeys.ENTRY)));
        }
    }

    private static void require(Values values, Key<?> key, Context context) {
        if (!isWritten(values, key)) {
            Section.refuseMissing(key, values.raw(), context);
        }
    }

    private static boolean isWritten(Values values, Key<?> key) {
        return values.raw().entries().stream().anyMatch(entry -> entry.key().equals(key.name()));
    }

    private static SimulationRequest request(Values scenario, CoilSource coilSource) {
        ProcessSection process = ProcessKeys.process(scenario.get(ScenarioKeys.PROCESS));
        // Without a joiner the strip runs at the process speed from the uncoiler on.
        double fastest = coilSource.kinds().stream()
                .mapToDouble(coil -> coil.processSpeed().orElse(process.speed()))
                .max()
                .orElse(process.speed());
        Entry entry = scenario.find(ScenarioKeys.ENTRY)
                .map(values -> EntryKeys.entry(values, fastest))
                .orElseGet(() ->
                        new Entry(1, fastest, process.acceleration(), process.deceleration(), Optional.empty(), 0));
        Line line = new Line(
                coilSource,
                entry,
                process,
                ChangeKeys.change(scenario.get(ScenarioKeys.CHANGE)),
                scenario.get(ScenarioKeys.PRACTICE).practice(scenario),
                scenario.find(ScenarioKeys.BENDING).map(ScenarioKeys::bending));
        return new SimulationRequest(
                scenario.get(ScenarioKeys.TITLE),
                scenario.get(ScenarioKeys.NOTES),
                line,
                scenario.find(ScenarioKeys.RUN).map(RunKeys::run).orElseGet(RunKeys::defaultRun),
                scenario.get(ScenarioKeys.RESULTS_IN));
    }
}
