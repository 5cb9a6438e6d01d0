package runthrough.report.limits;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import runthrough.report.StudyWords;
import runthrough.report.Table;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;

/** The tables of the limits of a line: what they are, and why simulation and hand calculation differ. */
final class LimitsTables {
    private final Limits limits;
    private final StudyWords words;
    private final LimitWords limitWords;

    LimitsTables(LimitWords limitWords) {
        this.limits = limitWords.limits();
        this.words = limitWords.words();
        this.limitWords = limitWords;
    }

    List<Table> all() {
        return List.of(table(), why());
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        limits.limits()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        limitWords.present(limit),
                        limitWords.found(limit),
                        limitWords.handCalculation(limit),
                        LimitWords.limitingFactor(limit).orElse(""))));
        limits.counts()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        Integer.toString(limit.present()),
                        LimitWords.found(limit.smallest()),
                        LimitWords.found(limit.closedForm()),
                        "")));
        return Table.words(
                "How far the target of " + words.texts().share(limits.target()) + " is met, each number driven alone",
                List.of("", "now", "limit", "closed form", "limited by"),
                rows,
                true);
    }

    /** Every reason once, with the limits that it concerns. */
    private Table why() {
        Map<LineLimit.Difference, List<String>> concerned = new EnumMap<>(LineLimit.Difference.class);
        List<String> agreeing = new ArrayList<>();
        limits.limits().forEach(limit -> sort(LimitWords.name(limit.what()), limit.differences(), concerned, agreeing));
        limits.counts().forEach(limit -> sort(LimitWords.name(limit.what()), limit.differences(), concerned, agreeing));
        int all = limits.limits().size() + limits.counts().size();
        List<List<String>> rows = new ArrayList<>();
        concerned.forEach((reason, names) -> rows.add(
                List.of(LimitWords.name(reason), limitWords.why(reason) + " Concerns " + concerned(names, all) + ".")));
        if (!agreeing.isEmpty()) {
            rows.add(List.of("no difference", concerned(agreeing, all) + "."));
        }
        return Table.words("Why simulation and hand calculation differ", List.of("", "reason"), rows, false);
    }

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
