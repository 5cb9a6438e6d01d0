package runthrough.report.verdict;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.lever.CauseWorth;
import runthrough.study.statistics.Estimate;

/** The causes that matter most, each with what it would be worth to remove it: compact, for a page to decide on. */
public final class MainCauses {
    private static final int MOST_ROWS = 5;

    private final RunThroughResult result;
    private final Texts texts;

    private MainCauses(RunThroughResult result) {
        this.result = result;
        this.texts = result.texts();
    }

    /**
     * Those of {@code result}; empty where it meets its targets, and where every coil change stops the process by design, since
     * that is the one cause and its headline says so.
     */
    public static Optional<Table> of(RunThroughResult result) {
        List<Row> causes = rows(result.verdict().namedCauses());
        return causes.isEmpty() || result.verdict().meetsAll()
                ? Optional.empty()
                : Optional.of(new MainCauses(result).table(causes));
    }

    /**
     * What one removal removes.
     *
     * @param removed the cause that goes
     * @param counts of it; several where all preparation goes, whatever element was waited for
     */
    private record Row(Reason removed, List<NamedCauses.Count> counts) {
        /** With what goes beside it, where its worth is that of more than itself. */
        String name(boolean isWorthKnown) {
            return named()
                    + RemovalWords.more(removed)
                            .filter(more -> isWorthKnown)
                            .map(more -> "; gain without " + more)
                            .orElse("");
        }

        private String named() {
            return counts.size() == 1
                    ? counts.get(0).reason().words()
                    : removed.words() + ": "
                            + counts.stream()
                                    .flatMap(count -> count.reason().element().stream())
                                    .map(Reason.Element::name)
                                    .collect(Collectors.joining(", "));
        }

        long changes() {
            return counts.stream().mapToLong(NamedCauses.Count::changes).sum();
        }
    }

    private static List<Row> rows(List<NamedCauses.Count> causes) {
        return causes.stream()
                .filter(count -> count.reason().cause() != Cause.PRACTICE)
                .collect(Collectors.groupingBy(
                        count -> count.reason().removed(), LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(removal -> new Row(removal.getKey(), removal.getValue()))
                .sorted(Comparator.comparingLong(Row::changes).reversed())
                .limit(MOST_ROWS)
                .toList();
    }

    private Table table(List<Row> causes) {
        boolean isWorthKnown =
                causes.stream().anyMatch(cause -> result.worth(cause.removed()).isPresent());
        TableMaker<Row> table = TableMaker.<Row>of(caption(isWorthKnown))
                .words("Cause", cause -> cause.name(isWorthKnown))
                .words("Coil changes", this::howMany);
        if (isWorthKnown) {
            worth(table, "Fewer stops", Notation.PLAIN.with(Rounding.AMOUNT), CauseWorth::stops);
            worth(table, "Less time lost", Notation.of(Unit.HOUR), CauseWorth::lostTime);
            worth(table, "More good strip", WorthTable.thousands(texts.notation(Kind.LENGTH)), WorthTable::thousands);
        }
        return table.of(causes);
    }

    private String caption(boolean isWorthKnown) {
        return "Causes of the "
                + Texts.count(result.verdict().changes().failed(), "coil change") + " that did not run through"
                + (isWorthKnown ? ", and what a year gains without each" : "");
    }

    private String howMany(Row cause) {
        double share = (double) cause.changes() / result.verdict().changes().failed();
        return Texts.count(cause.changes()) + ", " + texts.share(share);
    }

    private void worth(TableMaker<Row> table, String heading, Notation notation, Function<CauseWorth, Estimate> value) {
        table.with(
                new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE),
                cause -> result.worth(cause.removed())
                        .map(worth -> Cell.gainAlone(texts.value(notation, value.apply(worth))))
                        .orElse(Cell.none()));
    }
}
