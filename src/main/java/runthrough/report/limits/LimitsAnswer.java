package runthrough.report.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.limits.LimitRow;
import runthrough.chart.limits.LimitsChart;
import runthrough.plant.Shifts;
import runthrough.plant.StorageForm;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Figure;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.report.lever.LeverTable;
import runthrough.study.Evaluation;
import runthrough.study.lever.Lever;
import runthrough.study.lever.Levers;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;

/** Shows how far each number of a line can be driven. */
public final class LimitsAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("limits", 3, Subject.OF_LINES, () -> LimitsDocument.SHAPE);

    private final Limits limits;
    private final Optional<Levers> withoutStop;
    private final StudyWords words;
    private final LimitValues values;

    private LimitsAnswer(Limits limits, Optional<Levers> withoutStop) {
        this.limits = limits;
        this.withoutStop = withoutStop;
        this.words = StudyWords.of(limits.request().resultsIn(), limits.chance());
        this.values = new LimitValues(limits, words.texts());
    }

    /** The answer of {@code limits}, with the levers of the target without a stop where the line has one. */
    public static Answer of(Limits limits, Optional<Levers> withoutStop, List<String> warnings, Provenance provenance) {
        return new LimitsAnswer(limits, withoutStop).answer(warnings, provenance);
    }

    private List<Table> tables() {
        return Stream.concat(new LimitsTables(values).all().stream(), withoutStop.map(LeverTable::withoutStop).stream())
                .toList();
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(limits.request(), provenance),
                        "How far can the line be driven?",
                        basis(),
                        limits.chance()),
                new LimitsHeadline(values, words).headline(),
                advice(),
                figures(),
                new Answer.Body(charts(), tables(), account()),
                () -> LimitsDocument.SHAPE.fields(limits, limits.chance()),
                warnings,
                provenance);
    }

    private String basis() {
        if (limits.chance()) {
            return words.basis(limits.request(), limits.request().run().replications(), "value tried");
        }
        return limits.present()
                .map(present ->
                        Texts.count(present.changes()) + " coil changes for each value tried; nothing is random")
                .orElse("the practice alone; nothing was run");
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (!limits.applicable()) {
            advice.add(
                    "What coil changes cost such a line at which speed is shown by the study of speeds; an accumulator is"
                            + " what would let it run through.");
            return advice;
        }
        Evaluation present = limits.present().orElseThrow();
        words.tooShort(present.resolution(limits.target()), present.changes(), limits.target())
                .ifPresent(advice::add);
        if (limits.limits().stream().anyMatch(LineLimit::scaledAlike)) {
            advice.add(
                    "Coils of this line differ in speed or length: all were changed by the same factor. The speed given is"
                            + " the fastest, the length the mean.");
        }
        limits.limits()
                .forEach(limit -> limit.notFeasible()
                        .ifPresent(message -> advice.add("Beyond the " + LimitWords.name(limit) + ", "
                                + values.value(limit).text() + ", the line is not feasible: " + message.text())));
        if (limits.request().line().accumulator().form() instanceof StorageForm.Strands strands) {
            advice.add("The capacity goes by whole strands of " + words.texts().length(strands.stroke()) + "; now "
                    + strands.strands() + needed(strands) + ".");
        }
        limits.request().line().change().shifts().ifPresent(shifts -> advice.add(crewOf(shifts)));
        double fall = limits.limits().stream()
                .mapToDouble(limit -> limit.crossing().fall())
                .max()
                .orElse(0);
        if (limits.chance() && fall > 0) {
            advice.add(
                    "A value that asks less of the line did not always do better, by up to "
                            + words.texts().share(fall)
                            + " of coil changes under the same random numbers. Between such values the one that asks more is given.");
        }
        return advice;
    }

    /** How many strands the smallest capacity takes, where some number is enough. */
    private String needed(StorageForm.Strands strands) {
        OptionalDouble capacity = limits.limit(Lever.What.CAPACITY)
                .map(limit -> limit.crossing().answer())
                .orElse(OptionalDouble.empty());
        return capacity.isPresent() ? ", needed " + Math.round(capacity.getAsDouble() / strands.stroke()) : "";
    }

    /** What the one number of people means where they come by shifts. */
    private static String crewOf(Shifts shifts) {
        String crews = shifts.list().stream()
                .map(shift -> Integer.toString(shift.crew()))
                .collect(Collectors.joining(", "));
        return "The shifts have " + crews
                + " people. Smallest crew is that of the largest shift: every other shift was tried with"
                + " as many more or fewer people as that one, at least one, and as many are away in a break as before.";
    }

    private List<Figure> figures() {
        Stream<Figure> numbers =
                limits.limits().stream().map(limit -> figure(values.of(limit), values.reservation(limit)));
        Stream<Figure> counts = limits.counts().stream().map(limit -> figure(DrivenNumber.of(limit), shown(limit)));
        return Stream.concat(numbers, counts).toList();
    }

    private static Figure figure(DrivenNumber number, String further) {
        return new Figure(
                number.name(), number.limit(), "now " + number.present().text() + further);
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

    private List<Chart> charts() {
        ChartContext context = ChartContext.of(limits.request());
        List<LimitRow> seconds = values.rowsInSeconds();
        return Stream.concat(
                        LimitsChart.ofParts(context, values.rows(), reading()).stream(),
                        LimitsChart.ofSeconds(
                                context,
                                seconds,
                                seconds.stream()
                                                .map(row -> row.name() + ": " + row.text())
                                                .collect(Collectors.joining())
                                        + ".")
                                .stream())
                .toList();
    }

    private String reading() {
        String target = "The target of " + Texts.target(limits.target()) + " is met ";
        return limits.limits().stream()
                        .filter(limit -> limit.isCrossed() && limit.what() != Lever.What.JOINT_CYCLE_TIME)
                        .map(values::of)
                        .map(number -> number.name() + " " + number.limit().text() + " instead of "
                                + number.present().text())
                        .reduce((before, next) -> before + "; " + next)
                        .map(all -> target + "up to: " + all + ".")
                        .orElse(target + "throughout, or nowhere, within the ranges tried.")
                + LimitWords.noneEnough(limits).map(none -> " " + none).orElse("");
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Each number was changed alone, all others kept, until the target was lost or first reached. Every value met"
                        + " the same random numbers, coil change by coil change.");
        if (limits.chance()) {
            account.add(
                    "The limit is the hardest value at which the target is shown to be met. Its 95 % interval turns round"
                            + " that of the share: at its easy end the target is shown to be met, beyond its hard end it is shown"
                            + " to be missed.");
        } else {
            account.add(
                    "Nothing in this line is random, so limits are exact to one part in ten thousand. Each value was"
                            + " run for many coil changes, so that a lack that grows slowly is seen.");
        }
        account.add(
                "The hand calculation is the closed form for the kind of coil that is hardest on the line, with mean times: the"
                        + " hardest value at which capacity, refill and preparation are each enough.");
        account.add("Seconds of joint cycle time are added to, or taken off, every pass of the join work.");
        return account;
    }
}
