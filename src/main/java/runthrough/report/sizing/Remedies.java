package runthrough.report.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.cause.Cause;
import runthrough.study.sizing.Remedy;
import runthrough.study.sizing.Sizing;

/**
 * Says why no capacity is enough, and what would free it.
 *
 * @param none what was found
 * @param texts for its numbers
 */
record Remedies(Sizing.NoneEnough none, Texts texts) {
    private static final String FILE = "what-would-free-it.csv";

    /** Why, in a sentence. */
    String reason() {
        String why = none.cause() == Cause.WAITING_FOR_PREPARATION
                ? "joints wait for their coils to be prepared, longer than the entry can make up for"
                : "between coil changes the entry cannot bring back what a joint takes";
        return "However large the accumulator, it runs empty "
                + (none.byDowntime() ? "while the process runs" : "in the long run") + ": " + why
                + ". After each coil change "
                + texts.length(none.growth().mean()) + " more strip is lacking than after the one before.";
    }

    /** What would help and what would not, each on its own. */
    List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (none.byDowntime()) {
            advice.add(
                    "Only process downtime lets the accumulator fill again. Do not build on that: mend the line first, then"
                            + " size it.");
        }
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
                            .map(r -> name(r.what()) + ", tried as far as "
                                    + value(r, r.tried()).text())
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return advice;
    }

    private String instead(Remedy remedy) {
        return name(remedy.what()) + " "
                + value(remedy, remedy.needed().orElseThrow()).text() + " instead of "
                + value(remedy, remedy.now()).text();
    }

    /** One row for each change; none where some capacity is enough. */
    static Table table(Optional<Remedies> remedies, Texts texts) {
        return TableMaker.<Remedy>of("What would free it, each change alone")
                .intoFile(FILE)
                .words("change", remedy -> name(remedy.what()))
                .cell("now", remedy -> Cell.of(value(remedy, remedy.now(), texts)))
                .cell(
                        "needed",
                        remedy -> new Cell.Quantity(
                                value(remedy, remedy.needed().orElse(Double.NaN), texts), "does not help"))
                .cell("tried as far as", remedy -> Cell.of(value(remedy, remedy.tried(), texts)))
                .of(remedies.map(found -> found.none.remedies()).orElse(List.of()));
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

    private Value value(Remedy remedy, double si) {
        return value(remedy, si, texts);
    }

    private static Value value(Remedy remedy, double si, Texts texts) {
        return Value.of(
                si, kind(remedy.what()).map(kind -> texts.notation(kind, si)).orElse(Notation.PLAIN));
    }

    static Optional<Kind> kind(Remedy.What what) {
        return switch (what) {
            case ENTRY_TOP_SPEED, FILL_RATE_LIMIT, PROCESS_SPEED -> Optional.of(Kind.SPEED);
            case PREPARATION_TIME, JOINT_WORK -> Optional.of(Kind.TIME);
            case UNCOILERS, CREW -> Optional.empty();
        };
    }
}
