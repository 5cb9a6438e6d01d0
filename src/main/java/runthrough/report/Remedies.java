package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.quantity.Kind;
import runthrough.study.Cause;
import runthrough.study.sizing.Remedy;
import runthrough.study.sizing.Sizing;

/**
 * Tells why no capacity is enough, and what would free it.
 *
 * @param none what was found
 * @param words for its numbers
 */
record Remedies(Sizing.NoneEnough none, StudyWords words) {

    /** Why, in a sentence. */
    String reason() {
        String why = none.cause() == Cause.PREPARATION
                ? "joints wait for their coils to be prepared, longer than the entry can make up for"
                : "between coil changes the entry cannot bring back what a joint takes";
        return "However large the accumulator, it runs empty in the long run: " + why + ". After each coil change "
                + words.length(none.growth().mean()) + " of strip more are missing than after the one before.";
    }

    /** What would help and what would not, each on its own. */
    List<String> advice() {
        List<String> advice = new ArrayList<>();
        List<Remedy> useful =
                none.remedies().stream().filter(r -> r.needed().isPresent()).toList();
        if (useful.isEmpty()) {
            advice.add("No single change that was tried frees it; it takes several together.");
        } else {
            advice.add("Each of these alone would let some capacity be enough: "
                    + useful.stream().map(this::instead).collect(Collectors.joining("; ")) + ".");
        }
        List<Remedy> useless =
                none.remedies().stream().filter(r -> r.needed().isEmpty()).toList();
        if (!useless.isEmpty()) {
            advice.add("Not enough alone: "
                    + useless.stream()
                            .map(r -> name(r.what()) + ", tried as far as " + value(r.what(), r.tried()))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return advice;
    }

    private String instead(Remedy remedy) {
        return name(remedy.what()) + " " + value(remedy.what(), remedy.needed().orElseThrow()) + " instead of "
                + value(remedy.what(), remedy.now());
    }

    Table table() {
        return new Table(
                "What would free it, each change alone",
                List.of("", "now", "needed", "tried as far as"),
                none.remedies().stream()
                        .map(remedy -> List.of(
                                name(remedy.what()),
                                value(remedy.what(), remedy.now()),
                                remedy.needed().isPresent()
                                        ? value(remedy.what(), remedy.needed().getAsDouble())
                                        : "does not help",
                                value(remedy.what(), remedy.tried())))
                        .toList(),
                true);
    }

    /** Its rows, in the user's units; the header alone where some capacity is enough. */
    static String csv(Optional<Remedies> remedies, StudyWords words) {
        return CsvWriter.of(
                List.of("change", "unit", "now", "needed", "tried as far as"),
                remedies.map(r -> r.none.remedies().stream().map(r::row).toList())
                        .orElse(List.of()));
    }

    private List<String> row(Remedy remedy) {
        Optional<Kind> kind = kind(remedy.what());
        return List.of(
                name(remedy.what()),
                kind.map(k -> words.units().label(k)).orElse(""),
                cell(kind, remedy.now()),
                cell(kind, remedy.needed().orElse(Double.NaN)),
                cell(kind, remedy.tried()));
    }

    private String cell(Optional<Kind> kind, double value) {
        return CsvCells.number(kind.map(k -> words.units().value(k, value)).orElse(value));
    }

    private static String name(Remedy.What what) {
        return switch (what) {
            case ENTRY_TOP_SPEED -> "entry top speed";
            case FILL_RATE_LIMIT -> "fastest filling";
            case PREPARATION_TIME -> "mean time to prepare a coil";
            case JOINT_WORK -> "mean work at a joint";
            case UNCOILERS -> "uncoilers";
            case CREW -> "crew";
            case PROCESS_SPEED -> "process speed";
        };
    }

    private String value(Remedy.What what, double value) {
        return kind(what).map(kind -> words.of(kind, value)).orElseGet(() -> Texts.number(value));
    }

    static Optional<Kind> kind(Remedy.What what) {
        return switch (what) {
            case ENTRY_TOP_SPEED, FILL_RATE_LIMIT, PROCESS_SPEED -> Optional.of(Kind.SPEED);
            case PREPARATION_TIME, JOINT_WORK -> Optional.of(Kind.TIME);
            case UNCOILERS, CREW -> Optional.empty();
        };
    }
}
