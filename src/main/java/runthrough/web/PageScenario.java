package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.LineFigure;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.quantity.UnitSystem;
import runthrough.report.Fingerprint;
import runthrough.report.Texts;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.web.job.Refusal;

/**
 * A scenario as it stands on the page.
 *
 * @param text of it
 * @param file opened from the text
 * @param request what it asks, with results in the units of the page; empty when it cannot be run
 * @param ownUnits that it asks for results in itself; empty when it cannot be run
 * @param handover what it says for its document; nothing when it cannot be run
 * @param problems why it cannot be run
 * @param warnings in words
 */
record PageScenario(
        ScenarioText text,
        ScenarioFile file,
        Optional<SimulationRequest> request,
        Optional<UnitSystem> ownUnits,
        Handover handover,
        List<Problem> problems,
        List<String> warnings) {

    /** What it is called where nobody sees it. */
    static final String NAME = "line.yaml";

    /** Of one replication: what it holds of each has to find room in memory. */
    private static final int MOST_CHANGES = 200_000;

    PageScenario {
        problems = List.copyOf(problems);
        warnings = List.copyOf(warnings);
    }

    /** The one that {@code ask} brings, with the files that it brings. */
    static PageScenario of(PageRequest ask, PageFolder files) {
        return Answers.readInTime(() -> of(ask.scenario(), files.with(ask.allSent()), ask.system()));
    }

    /**
     * Reads {@code text}.
     *
     * @param folder that holds the files which it may name, and no others
     */
    static PageScenario of(String text, Path folder, UnitSystem units) {
        ScenarioText scenario = new ScenarioText(folder.resolve(NAME), text);
        ScenarioFile file = scenario.open();
        List<Problem> foreign = NamedFiles.of(scenario).foreign();
        if (!foreign.isEmpty()) {
            return new PageScenario(
                    scenario, file, Optional.empty(), Optional.empty(), Handover.NONE, foreign, List.of());
        }
        ScenarioReading reading = file.read();
        if (reading instanceof ScenarioReading.Accepted accepted) {
            SimulationRequest request = accepted.request();
            return new PageScenario(
                    scenario,
                    file,
                    Optional.of(request.with(units)),
                    Optional.of(request.resultsIn()),
                    accepted.handover(),
                    List.of(),
                    Stream.concat(accepted.warnings().stream(), file.astrayAlternatives().stream())
                            .map(PageScenario::said)
                            .toList());
        }
        ScenarioReading.Refused refused = (ScenarioReading.Refused) reading;
        List<Problem> problems = Stream.concat(
                        refused.problems().stream(), file.problemsOfAlternatives(List.of(), refused).stream())
                .sorted(Problem.BY_PLACE)
                .toList();
        return new PageScenario(scenario, file, Optional.empty(), Optional.empty(), Handover.NONE, problems, List.of());
    }

    /** {@code before} with {@code changes}, or what is wrong with them; no file is read that the page may not read. */
    static ScenarioText.Changed edited(ScenarioText before, List<ScenarioText.Change> changes) {
        ScenarioText.Changed now =
                new ScenarioText.Changed(before, NamedFiles.of(before).foreign());
        for (ScenarioText.Change change : changes) {
            if (now.problems().isEmpty()) {
                ScenarioText.Changed next = now.text().with(List.of(change));
                now = next.problems().isEmpty()
                        ? new ScenarioText.Changed(
                                next.text(), NamedFiles.of(next.text()).foreign())
                        : next;
            }
        }
        return now.problems().isEmpty() ? new ScenarioText.Changed(now.text().withRoom(changes), List.of()) : now;
    }

    /** A problem or warning with the line of the scenario, or with the name of the table in which it is. */
    static String said(Problem problem) {
        // A figure is no key of the file that anybody could look for: it is called as a person would.
        String path = LineFigure.called(problem.path())
                .map(figure -> figure.path().replace('-', ' '))
                .orElse(problem.path());
        String table = Optional.ofNullable(Path.of(problem.file()).getFileName())
                .map(Path::toString)
                .filter(name -> !name.equals(NAME) && !name.equals(problem.path()))
                .orElse("");
        String line = problem.line() == 0 ? "" : "line " + problem.line();
        String where = table + (table.isEmpty() || line.isEmpty() ? "" : ", ") + line;
        Place place = new Place(problem.file(), problem.line(), problem.column());
        return where + (where.isEmpty() ? "" : ": ") + problem.at(place, path).reason() + ". " + problem.remedy();
    }

    /** SHA-256 of the text's bytes, in hexadecimal: that of the file saved from the page. */
    String fingerprint() {
        return Fingerprint.of(text.text());
    }

    /** What it asks, of a draft that can be run, and not for too long. */
    SimulationRequest asked() {
        SimulationRequest asked = request.orElseThrow(() -> new Refusal(
                422, problems.stream().map(PageScenario::said).findFirst().orElse("the line cannot be run")));
        double changes = changes(asked);
        if (changes > MOST_CHANGES) {
            throw new Refusal(
                    422,
                    "One replication would have about " + Texts.about((long) changes)
                            + " coil changes; the page runs at most " + Texts.count(MOST_CHANGES)
                            + ". Ask for fewer, or run it on the command line.");
        }
        return asked;
    }

    /** About how many coil changes a replication has. */
    static double changes(SimulationRequest asked) {
        if (asked.run().extent() instanceof RunPlan.Extent.Changes changes) {
            return changes.changes();
        }
        double time = ((RunPlan.Extent.Time) asked.run().extent()).duration();
        return time
                * LineFigure.RATED_SPEED.of(asked.line()).orElse(0)
                / LineFigure.COIL_LENGTH.of(asked.line()).orElse(1);
    }
}
