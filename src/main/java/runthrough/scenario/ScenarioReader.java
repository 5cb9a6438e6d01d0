package runthrough.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.CoilSource;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.plant.check.StandIn;
import runthrough.plant.handover.Handover;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.coil.CoilSourceReader;
import runthrough.scenario.coil.KnownCoils;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Readings;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.part.PracticeWord;
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
     * @param readings of earlier, that need not be done again
     * @param figures of the line that are set
     * @param problems takes what is wrong
     */
    ScenarioReader(Path file, KnownCoils coils, Readings readings, FigureSettings figures, Problems problems) {
        this.file = file;
        this.coils = coils;
        this.figures = figures;
        this.problems = problems;
        this.top = Context.top(problems, readings);
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
            tellWhatIsIndependent(scenario, found);
            return Optional.empty();
        }
        DescribedParts parts =
                new DescribedParts(scenario, found.map(CoilSourceReader.Found::coilSource), StandIn.MILD);
        SimulationRequest written = parts.request();
        Optional<SimulationRequest> request = figures.apply(written, top, problems);
        MessagePlaces places = new MessagePlaces(mapping, found.get().places());
        UnitSystem usual = written.resultsIn();
        places.inUnitsOfFile(usual, parts::unused).forEach(message -> places.tell(message, problems));
        List<Message> ofWritten = places.inUnitsOfFile(usual, units -> check(written, units));
        request.filter(asked -> !asked.equals(written))
                .map(asked -> places.inUnitsOfFile(usual, units -> check(asked, units)))
                .orElse(ofWritten)
                .forEach(message -> {
                    boolean isOfFigures = !ofWritten.contains(message);
                    (isOfFigures ? places.at(figures.place()) : places).tell(message, problems);
                });
        return request;
    }

    /**
     * Reports what is wrong between values, of those that could be read; where so much is wrong already that more would only be
     * counted, it is not looked for. With figures to be set on top of them it is not known what the values will be.
     */
    private void tellWhatIsIndependent(Values scenario, Optional<CoilSourceReader.Found> found) {
        if (!figures.settings().isEmpty()) {
            figures.checkAlone(top);
            return;
        }
        if (problems.isFull()) {
            return;
        }
        MessagePlaces places = new MessagePlaces(
                scenario.raw(), found.map(CoilSourceReader.Found::places).orElse(List.of()));
        Optional<CoilSource> coilSource = found.map(CoilSourceReader.Found::coilSource);
        UnitSystem usual = scenario.get(ScenarioKeys.RESULTS_IN);
        StandIn.independent(standIn -> {
                    DescribedParts parts = new DescribedParts(scenario, coilSource, standIn);
                    return places.inUnitsOfFile(usual, parts::messages);
                })
                .forEach(message -> places.tell(message, problems));
    }

    private static List<Message> check(SimulationRequest request, UnitSystem units) {
        return LineCheck.check(request.line(), Optional.of(request.run()), Set.of(), units);
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
}
