package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.scenario.source.Problem;

/**
 * What came of reading the alternatives of a scenario that can be run.
 *
 * @param alternatives the scenario as written first, then those named, in the order of the file; without those that cannot be
 *     run
 * @param today name of the one that the others are compared with
 * @param problems all that is wrong, in the order of files, lines and columns; each names its alternative
 * @param isCut whether there is more than these, so that alternatives after them were not read
 * @param refused those that describe a line that cannot be run; their problems are among the others
 * @param warnings what the user should know besides, but for what holds for the scenario as written
 */
public record AlternativesReading(
        List<Alternative> alternatives,
        String today,
        List<Problem> problems,
        boolean isCut,
        List<Refused> refused,
        List<Problem> warnings) {

    public AlternativesReading {
        alternatives = List.copyOf(alternatives);
        problems = List.copyOf(problems);
        refused = List.copyOf(refused);
        warnings = List.copyOf(warnings);
    }

    /**
     * The problems but for those of alternatives that a comparison can leave out: they describe a line that cannot be run, are not the one
     * called today, and leave others to compare.
     */
    public List<Problem> hindering() {
        List<Problem> leftOut = leftOut().stream()
                .filter(one -> !one.name().equals(today))
                .flatMap(one -> one.problems().stream())
                .toList();
        return problems.stream().filter(problem -> !leftOut.contains(problem)).toList();
    }

    /** Says that there is more wrong than is listed; empty where there is not. */
    public Optional<String> further() {
        return isCut ? Optional.of("and more problems of alternatives") : Optional.empty();
    }

    /** Those that cannot be run, where there are others to compare. */
    public List<Refused> leftOut() {
        return alternatives.size() > 1 ? refused : List.of();
    }

    /**
     * An alternative that cannot be run.
     *
     * @param name that the user calls it by
     * @param why it cannot
     * @param problems the same, each with its place
     */
    public record Refused(String name, String why, List<Problem> problems) {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
