package runthrough.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
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
 * @param fingerprint SHA-256 of the file's bytes, in hexadecimal
 */
record Scenario(Brief brief, List<String> warnings, String fingerprint) {

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
            return new Scenario(accepted.brief(), texts(accepted.warnings()).toList(), fingerprint(file));
        }
        ScenarioReading.Refused refused = (ScenarioReading.Refused) reading;
        List<String> lines = new ArrayList<>(texts(refused.problems()).toList());
        if (refused.further() > 0) {
            lines.add("and " + refused.further() + " more problems");
        }
        texts(refused.warnings()).map(Scenario::asWarning).forEach(lines::add);
        throw new BadInputException(lines);
    }

    private static String fingerprint(Path file) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has it", e);
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + e.getMessage() + "). Check the disk.");
        }
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
                        .toList(),
                fingerprint);
    }

    private static String onCommandLine(Finding finding) {
        return "with the options given, " + finding.text();
    }
}
