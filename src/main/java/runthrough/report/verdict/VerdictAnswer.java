package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.chart.Chart;
import runthrough.chart.verdict.Charts;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Chapter;
import runthrough.report.Headline;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.described.InputTables;
import runthrough.report.lever.LeverTable;
import runthrough.report.lever.WayTable;

/** The verdict: whether the line runs through its coil changes. */
public final class VerdictAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("verdict", 3, Subject.OF_LINES, () -> VerdictDocument.SHAPE);

    private final RunThroughResult result;
    private final Diagnosis diagnosis;
    private final HandChapter hand;

    private VerdictAnswer(RunThroughResult result) {
        this.result = result;
        this.diagnosis = new Diagnosis(result);
        this.hand = new HandChapter(result);
    }

    /** The answer that {@code result} gives. */
    public static Answer of(RunThroughResult result) {
        return new VerdictAnswer(result).answer(Charts.of(result.study()));
    }

    /** The same without charts, which take long to draw and need a study that kept what they show. */
    public static Answer inWords(RunThroughResult result) {
        return new VerdictAnswer(result).answer(List.of());
    }

    /** The hand calculation step by step as text, each line ended by a line feed. */
    public static String working(RunThroughResult result) {
        return new HandChapter(result).working();
    }

    private Answer answer(List<Chart> charts) {
        int replications = result.study().request().run().replications();
        Headline headline = VerdictHeadline.of(result);
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(result.study().request(), result.provenance()),
                        "Does the line run through its coil changes?",
                        result.words().runs(result.study().request(), replications) + ", seed "
                                + result.study().request().run().seed(),
                        result.verdict().chance()),
                headline,
                advice(),
                new VerdictFigures(result).all(),
                new Answer.Body(charts, tables(), chapters(), Map.of()),
                () -> VerdictDocument.SHAPE.fields(result, result.verdict().chance()),
                result.warnings(),
                result.provenance());
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        advice.add("Limiting factor: " + diagnosis.limiting());
        diagnosis.moreStops().ifPresent(advice::add);
        diagnosis.fallingLevel().ifPresent(advice::add);
        CoilTexts.of(result).flatMap(CoilTexts::worst).ifPresent(worst -> advice.add("Worst coil: " + worst));
        CoilTexts.of(result).flatMap(CoilTexts::notSeen).ifPresent(advice::add);
        return advice;
    }

    private List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        VerdictTables verdictTables = new VerdictTables(result);
        tables.add(verdictTables.causes());
        tables.add(WorthTable.of(result));
        result.levers().map(levers -> LeverTable.of(levers)).ifPresent(tables::add);
        result.levers()
                .filter(levers -> !levers.ways().isEmpty())
                .map(WayTable::of)
                .ifPresent(tables::add);
        tables.add(hand.limits().in(Table.Seen.TERMINAL));
        tables.add(new VerdictFigures(result).details());
        tables.addAll(VerdictTables.of(result));
        CoilTexts.of(result).ifPresent(coils -> {
            tables.add(coils.products());
            tables.add(coils.hardest());
        });
        return tables;
    }

    private List<Chapter> chapters() {
        List<Chapter.Block> changes = new ArrayList<>();
        Optional<String> margin = diagnosis.margin();
        margin.map(Chapter.Paragraph::new).ifPresent(changes::add);
        changes.add(new Chapter.Points(diagnosis.remedies()));
        return List.of(new Chapter("changes", "What to change", changes), hand.chapter(), MethodChapter.of(result));
    }
}
