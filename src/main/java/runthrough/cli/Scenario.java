package runthrough.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.Brief;
import runthrough.plant.Finding;
import runthrough.plant.LineCheck;
import runthrough.scenario.ScenarioReader;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.source.Problem;

/**
 * A scenario that can be run, and what to warn of.
 *
 * @param warnings one line each
 */
record Scenario(Brief brief, List<String> warnings) {

    Scenario {
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads {@code file}.
     *
     * @throws BadInputException with everything that is wrong with it
     */
    static Scenario read(Path file) {
        ScenarioReading reading = ScenarioReader.read(file);
        if (reading instanceof ScenarioReading.Accepted accepted) {
            return new Scenario(accepted.brief(), texts(accepted.warnings()).toList());
        }
        ScenarioReading.Refused refused = (ScenarioReading.Refused) reading;
        List<String> lines = new ArrayList<>(texts(refused.problems()).toList());
        if (refused.further() > 0) {
            lines.add("and " + refused.further() + " more problems");
        }
        texts(refused.warnings()).map(Scenario::asWarning).forEach(lines::add);
        throw new BadInputException(lines);
    }

    private static Stream<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::toString);
    }

    /** How a warning is told from a problem. */
    static String asWarning(String text) {
        return "warning: " + text;
    }

    /**
     * The same with what the command line says otherwise.
     *
     * @throws BadInputException when the two together cannot be run
     */
    Scenario with(RunOverrides overrides) {
        Brief changed = brief.with(overrides.plan(brief.run()));
        List<Finding> before = LineCheck.check(brief);
        List<Finding> found = LineCheck.check(changed).stream()
                .filter(finding -> !before.contains(finding))
                .toList();
        List<String> errors = found.stream()
                .filter(Finding::isError)
                .map(Scenario::onCommandLine)
                .toList();
        if (!errors.isEmpty()) {
            throw new BadInputException(errors);
        }
        Brief shown = new Brief(
                changed.title(), changed.notes(), changed.line(), changed.run(), overrides.units(changed.resultsIn()));
        return new Scenario(
                shown,
                Stream.concat(warnings.stream(), found.stream().map(Scenario::onCommandLine))
                        .toList());
    }

    private static String onCommandLine(Finding finding) {
        return "with the options given, " + finding.text();
    }
}
