package runthrough.report.limits;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;

/** The tables of the limits of a line: what they are, and why simulation and hand calculation differ. */
final class LimitsTables {
    private static final String FILE = "limits.csv";

    private final Limits limits;
    private final LimitValues values;

    LimitsTables(LimitValues values) {
        this.limits = values.limits();
        this.values = values;
    }

    List<Table> all() {
        return List.of(table(), why());
    }

    private Table table() {
        return TableMaker.<DrivenNumber>of(
                        "How far the target of " + Texts.target(limits.target()) + " is met, each number changed alone")
                .intoFile(FILE)
                .words("limit", DrivenNumber::name)
                .pageWords("limited by", DrivenNumber::limitingFactor)
                .cell("now", number -> Cell.of(number.present()))
                .cell("value", DrivenNumber::limit)
                .with(column("low", Column.Place.FILE), number -> Cell.of(number.low()))
                .with(column("high", Column.Place.FILE), number -> Cell.of(number.high()))
                .with(column("shown to meet", Column.Place.FILE), number -> Cell.of(number.shown()))
                .with(column("closed form", Column.Place.PAGE), DrivenNumber::handCalculation)
                .with(column("hand calculation", Column.Place.FILE), number -> Cell.of(number.closedForm()))
                .fileWords("limiting factor", DrivenNumber::limitingFactor)
                .of(limits.applicable() ? values.all() : List.of());
    }

    private static Column column(String heading, Column.Place place) {
        return new Column(heading, Column.Holds.NUMBERS, Optional.empty(), place);
    }

    /** Every reason once, with the limits that it concerns. */
    private Table why() {
        Map<LineLimit.Difference, List<String>> concerned = new EnumMap<>(LineLimit.Difference.class);
        List<String> agreeing = new ArrayList<>();
        limits.limits().forEach(limit -> sort(LimitWords.name(limit), limit.differences(), concerned, agreeing));
        limits.counts().forEach(limit -> sort(LimitWords.name(limit.what()), limit.differences(), concerned, agreeing));
        int all = limits.limits().size() + limits.counts().size();
        String allowed = Texts.target(1 - limits.target());
        List<Reason> rows = new ArrayList<>();
        concerned.forEach((reason, names) -> rows.add(new Reason(
                LimitWords.name(reason),
                LimitWords.why(reason, allowed) + " Concerns " + concerned(names, all) + ".")));
        if (!agreeing.isEmpty()) {
            rows.add(new Reason("no difference", concerned(agreeing, all) + "."));
        }
        return TableMaker.<Reason>of("Why simulation and hand calculation differ")
                .words("", Reason::name)
                .words("reason", Reason::text)
                .of(rows);
    }

    private record Reason(String name, String text) {}

    private static void sort(
            String name,
            List<LineLimit.Difference> differences,
            Map<LineLimit.Difference, List<String>> concerned,
            List<String> agreeing) {
        differences.forEach(reason ->
                concerned.computeIfAbsent(reason, any -> new ArrayList<>()).add(name));
        if (differences.isEmpty()) {
            agreeing.add(name);
        }
    }

    private static String concerned(List<String> names, int all) {
        return names.size() == all ? "all limits" : String.join("; ", names);
    }
}
