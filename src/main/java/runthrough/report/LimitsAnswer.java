package runthrough.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.chart.LimitRow;
import runthrough.chart.StudyCharts;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.ReportPage.KeyFigure;
import runthrough.study.Answer;
import runthrough.study.Evaluation;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing.Found;

/** Tells how far each number of a line can be driven. */
public final class LimitsAnswer {
    private static final String CSV = "limits.csv";

    private final Limits limits;
    private final StudyWords words;
    private final LimitWords limitWords;

    private LimitsAnswer(Limits limits) {
        this.limits = limits;
        this.words = StudyWords.of(limits.brief().resultsIn(), limits.chance());
        this.limitWords = new LimitWords(limits, words);
    }

    /** The answer of {@code limits}. */
    public static StudyAnswer of(Limits limits, List<String> warnings, Provenance provenance) {
        return new LimitsAnswer(limits).answer(warnings, provenance);
    }

    private StudyAnswer answer(List<String> warnings, Provenance provenance) {
        return new StudyAnswer(
                limits.brief(),
                "limits",
                "How far can the line be driven?",
                mark(),
                advice(),
                figures(),
                basis(),
                StudyCharts.of(limits, rows(), reading()),
                limits.applicable() ? List.of(table(), why()) : List.of(),
                account(),
                limits.chance(),
                LimitsDocument.SHAPE.fields(limits, limits.chance()),
                Map.of(CSV, csv()),
                warnings,
                provenance);
    }

    private String basis() {
        if (limits.chance()) {
            return words.basis(limits.brief(), limits.brief().run().replications());
        }
        return limits.present()
                .map(present -> Texts.count(present.changes())
                        + " coil changes for each value tried; nothing is left to chance")
                .orElse("the practice alone; nothing was run");
    }

    private ReportPage.Mark mark() {
        Optional<Answer> present = limits.present().map(evaluation -> evaluation.answer(limits.target()));
        if (present.isEmpty()) {
            return new ReportPage.Mark(
                    "◆",
                    "NO LIMITS TO FIND",
                    "marginal",
                    "Entry and process of this line are one strip: every coil change stops it, at any process speed and"
                            + " with any joint. There is no value up to which it runs through.",
                    "");
        }
        return switch (present.get()) {
            case MEETS -> new ReportPage.Mark("✓", "WITHIN ITS LIMITS", "runs-through", sentence(), "");
            case MISSES -> new ReportPage.Mark("✗", "BEYOND ITS LIMITS", "stops", sentence(), "");
            case UNDECIDED -> new ReportPage.Mark("◆", "AT ITS LIMITS", "marginal", sentence(), "");
        };
    }

    private String sentence() {
        Evaluation present = limits.present().orElseThrow();
        boolean meets = present.answer(limits.target()) == Answer.MEETS;
        String now = "As it is, the line runs through "
                + words.known(present.shareRunThrough()) + " of coil changes; the target is "
                + words.share(limits.target()) + ". ";
        List<String> ways = Stream.of(
                        LineLimit.What.PROCESS_SPEED,
                        LineLimit.What.JOINT_TIME_FACTOR,
                        LineLimit.What.ENTRY_TOP_SPEED,
                        LineLimit.What.COIL_LENGTH)
                .map(what -> limits.limit(what).orElseThrow())
                .filter(limit -> limit.crossing().found() == Found.CROSSED)
                .map(this::way)
                .toList();
        if (ways.isEmpty()) {
            return now + "No single number that was driven brings it to the target or loses it.";
        }
        return now + (meets ? "It would still meet it " : "It would meet it ") + String.join(", or ", ways)
                + ", all else as it is.";
    }

    private String way(LineLimit limit) {
        double value = limit.crossing().value().orElseThrow();
        String text = limitWords.value(limit.what(), value);
        return switch (limit.what()) {
            case PROCESS_SPEED -> "with the process at up to " + text + " (now " + limitWords.present(limit) + ")";
            case JOINT_TIME_FACTOR -> "with joints that take up to " + text.replace(" x", " times") + " their time";
            case JOINT_TIME_ADDED -> "with joints longer by up to " + text.substring(1);
            case ENTRY_TOP_SPEED -> "with an entry of at least " + text + " (now " + limitWords.present(limit) + ")";
            case COIL_LENGTH -> "with coils of at least " + text + " (now " + limitWords.present(limit) + ")";
        };
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (!limits.applicable()) {
            advice.add(
                    "What coil changes cost such a line at which speed is told by the study of speeds; an accumulator is"
                            + " what would let it run through.");
            return advice;
        }
        Evaluation present = limits.present().orElseThrow();
        words.tooShort(present.resolution(limits.target()), present.changes(), limits.target())
                .ifPresent(advice::add);
        if (limits.limits().stream().anyMatch(LineLimit::scaledAlike)) {
            advice.add(
                    "Coils of this line differ in speed or length: all were changed by the same factor. The speed told is"
                            + " the fastest, the length the mean.");
        }
        double fall = limits.limits().stream()
                .mapToDouble(limit -> limit.crossing().fall())
                .max()
                .orElse(0);
        if (limits.chance() && fall > 0) {
            advice.add("A value that asks less of the line did not always do better, by up to " + words.share(fall)
                    + " of coil changes under the same luck. Between such values the one that asks more is told.");
        }
        return advice;
    }

    private List<KeyFigure> figures() {
        Stream<KeyFigure> numbers = limits.limits().stream()
                .map(limit -> new KeyFigure(
                        LimitWords.name(limit.what()),
                        limitWords.found(limit),
                        "now " + limitWords.present(limit)
                                + limitWords
                                        .interval(limit)
                                        .map(interval -> "; 95 % interval " + interval)
                                        .orElse("")));
        Stream<KeyFigure> counts = limits.counts().stream()
                .map(limit -> new KeyFigure(
                        LimitWords.name(limit.what()),
                        LimitWords.found(limit.smallest()),
                        "now " + limit.present() + shown(limit)));
        return Stream.concat(numbers, counts).toList();
    }

    /** What number is shown to do, where that is not the one that is seen to. */
    private String shown(CountLimit limit) {
        if (!limits.chance() || limit.smallest().isEmpty() || limit.sure().equals(limit.smallest())) {
            return "";
        }
        return limit.sure().isPresent()
                ? "; " + limit.sure().getAsInt() + " is shown to do"
                : "; not shown with any number";
    }

    private List<LimitRow> rows() {
        return Stream.concat(
                        limits.limits().stream().map(limitWords::row),
                        limits.counts().stream().map(limitWords::row))
                .toList();
    }

    private String reading() {
        return limits.limits().stream()
                .filter(limit -> limit.crossing().found() == Found.CROSSED)
                .map(limit -> LimitWords.name(limit.what()) + " " + limitWords.found(limit) + " instead of "
                        + limitWords.present(limit))
                .collect(Collectors.joining(
                        "; ", "The target of " + words.share(limits.target()) + " is met up to: ", "."))
                .replace("up to: .", "up to no limit within reach.");
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        limits.limits()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        limitWords.present(limit),
                        limitWords.found(limit),
                        limitWords.byHand(limit),
                        LimitWords.binds(limit).orElse(""))));
        limits.counts()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        Integer.toString(limit.present()),
                        LimitWords.found(limit.smallest()),
                        LimitWords.found(limit.byHand()),
                        "")));
        return new Table(
                "How far the target of " + words.share(limits.target()) + " is met, each number driven alone",
                List.of("", "now", "limit", "by hand", "what binds"),
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
        return new Table("Why simulation and hand calculation differ", List.of("", "reason"), rows, false);
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

    private String csv() {
        List<List<String>> rows = new ArrayList<>();
        limits.limits().forEach(limit -> rows.add(row(limit)));
        limits.counts()
                .forEach(limit -> rows.add(List.of(
                        LimitWords.name(limit.what()),
                        "",
                        Integer.toString(limit.present()),
                        cell(limit.smallest()),
                        "",
                        "",
                        cell(limit.sure()),
                        cell(limit.byHand()),
                        "")));
        return CsvText.of(
                List.of("limit", "unit", "now", "value", "low", "high", "shown to meet", "by hand", "what binds"),
                rows);
    }

    private List<String> row(LineLimit limit) {
        Optional<Unit> unit = limit.what() == LineLimit.What.JOINT_TIME_FACTOR
                ? Optional.empty()
                : Optional.of(
                        limit.what().kind() == Kind.TIME
                                ? Unit.SECOND
                                : words.units().unit(limit.what().kind()));
        return List.of(
                LimitWords.name(limit.what()),
                unit.map(Unit::symbol).orElse("times the present time"),
                cell(unit, OptionalDouble.of(limit.present())),
                cell(unit, limit.crossing().value()),
                cell(unit, limits.chance() ? limit.crossing().low() : OptionalDouble.empty()),
                cell(unit, limits.chance() ? limit.crossing().high() : OptionalDouble.empty()),
                cell(unit, limit.crossing().sure()),
                cell(
                        unit,
                        limit.neighbour()
                                .map(near -> OptionalDouble.of(near.value()))
                                .orElse(OptionalDouble.empty())),
                LimitWords.binds(limit).orElse(""));
    }

    private static String cell(Optional<Unit> unit, OptionalDouble si) {
        double value = si.orElse(Double.NaN);
        return CsvCells.number(unit.map(u -> u.fromSi(value)).orElse(value));
    }

    private static String cell(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Each number was driven alone, all others kept, until the target was lost or first reached. Every value met"
                        + " the same luck: the same random numbers, coil change by coil change.");
        if (limits.chance()) {
            account.add(
                    "The limit is the hardest value at which the share seen reaches the target. Its 95 % interval turns round"
                            + " that of the share: at its easy end the target is shown to be met, beyond its hard end it is shown"
                            + " to be missed.");
        } else {
            account.add(
                    "Nothing is left to chance in this line, so limits are exact but for a ten-thousandth. Each value was"
                            + " run for many coil changes, so that a lack that grows slowly is seen.");
        }
        account.add(
                "By hand stands the closed form for the kind of coil that is hardest on the line, with mean times: the"
                        + " hardest value at which capacity, refill and preparation are each enough.");
        account.add(
                "The factor on joint time is on all work while the strip stands; more time is the same for every joint.");
        return account;
    }
}
