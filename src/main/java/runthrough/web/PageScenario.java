package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
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
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Raw;
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

    /** Keys whose values name files. */
    private static final Set<String> NAME_FILES = Set.of("schedule", "sheet", "file", "times");

    /** A file that lies beside it, which is one of the program itself or was sent with it. */
    static final Pattern OWN_FILE = Pattern.compile("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*");

    PageScenario {
        problems = List.copyOf(problems);
        warnings = List.copyOf(warnings);
    }

    /** The one that {@code ask} brings, with the files that it brings. */
    static PageScenario of(PageRequest ask, PageFolder files) {
        return of(ask.scenario(), files.with(ask.allSent()), ask.system());
    }

    /**
     * Reads {@code text}.
     *
     * @param folder that holds the files which it may name, and no others
     */
    static PageScenario of(String text, Path folder, UnitSystem units) {
        ScenarioText scenario = new ScenarioText(folder.resolve(NAME), text);
        ScenarioFile file = scenario.open();
        List<Problem> foreign = foreignFiles(scenario);
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
                    accepted.warnings().stream().map(PageScenario::said).toList());
        }
        List<Problem> problems = ((ScenarioReading.Refused) reading).problems();
        return new PageScenario(scenario, file, Optional.empty(), Optional.empty(), Handover.NONE, problems, List.of());
    }

    /** {@code before} with {@code changes}, or what is wrong with them; no file is read that the page may not read. */
    static ScenarioText.Changed edited(ScenarioText before, List<ScenarioText.Change> changes) {
        ScenarioText.Changed now = new ScenarioText.Changed(before, foreignFiles(before));
        for (ScenarioText.Change change : changes) {
            if (now.problems().isEmpty()) {
                ScenarioText.Changed next = now.text().with(List.of(change));
                now = next.problems().isEmpty()
                        ? new ScenarioText.Changed(next.text(), foreignFiles(next.text()))
                        : next;
            }
        }
        return now;
    }

    /**
     * The files that {@code scenario} names and the page may not read, before any is read: the page may come from a link of
     * somebody else's, so a scenario on it names no files of this machine.
     */
    private static List<Problem> foreignFiles(ScenarioText scenario) {
        return scenario.raw().stream()
                .flatMap(raw -> foreignFiles("", raw).stream())
                .toList();
    }

    private static List<Problem> foreignFiles(String path, Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return mapping.entries().stream()
                    .flatMap(entry -> {
                        String inner = path.isEmpty() ? entry.key() : path + "." + entry.key();
                        boolean isForeign = NAME_FILES.contains(entry.key())
                                && entry.value() instanceof Raw.Scalar scalar
                                && !OWN_FILE.matcher(scalar.text().strip()).matches();
                        return isForeign
                                ? List.of(foreign(inner, (Raw.Scalar) entry.value())).stream()
                                : foreignFiles(inner, entry.value()).stream();
                    })
                    .toList();
        } else if (raw instanceof Raw.Sequence sequence) {
            return sequence.items().stream()
                    .flatMap(item -> foreignFiles(path, item).stream())
                    .toList();
        }
        return List.of();
    }

    private static Problem foreign(String path, Raw.Scalar value) {
        return new Problem(
                value.place().file(),
                value.place().line(),
                value.place().column(),
                path,
                value.text(),
                "on the page only files of the lines that come with the program, and those dropped on it, can be used",
                "Drop the file on the page, or run this scenario on the command line.");
    }

    /** A problem or warning without the name of the file, of which there is one only. */
    static String said(Problem problem) {
        String what = problem.path().isEmpty() || problem.value().isEmpty()
                ? problem.path() + problem.value()
                : problem.path() + " = " + problem.value();
        String where = problem.line() == 0 ? "" : "line " + problem.line() + ": ";
        return where + (what.isEmpty() ? "" : what + "; ") + problem.rule() + ". " + problem.remedy();
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
