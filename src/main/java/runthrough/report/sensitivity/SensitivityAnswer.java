package runthrough.report.sensitivity;

import java.util.ArrayList;
import java.util.List;
import runthrough.chart.sensitivity.SensitivityCharts;
import runthrough.quantity.Kind;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.Sensitivity;
import runthrough.study.sensitivity.SwingEffect;

/** Sensitivity: which inputs and random sources change the answer. */
public final class SensitivityAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("sensitivity", 2, Subject.OF_LINES, () -> SensitivityDocument.SHAPE);

    private final Sensitivity sensitivity;
    private final double usual;
    private final StudyWords words;
    private final SwingWords swings;
    private final VarianceWords variance;

    private SensitivityAnswer(Sensitivity sensitivity, double usual) {
        this.sensitivity = sensitivity;
        this.usual = usual;
        this.words = StudyWords.of(sensitivity.request().resultsIn(), sensitivity.chance());
        this.swings = new SwingWords(sensitivity.swings(), words.texts());
        this.variance = new VarianceWords(sensitivity.randomness());
    }

    /**
     * The answer of {@code sensitivity}.
     *
     * @param usual the share of their value by which inputs without a stated range were moved to either side
     */
    public static Answer of(Sensitivity sensitivity, double usual, List<String> warnings, Provenance provenance) {
        return new SensitivityAnswer(sensitivity, usual).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        List<Table> tables = new ArrayList<>(new SwingTables(swings).all());
        tables.addAll(new VarianceTables(sensitivity.randomness(), words.texts()).all());
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(sensitivity.request(), provenance),
                        "Sensitivity: which inputs and random times change the answer?",
                        basis(),
                        sensitivity.chance()),
                headline(),
                advice(),
                figures(),
                new Answer.Body(SensitivityCharts.of(sensitivity), tables, account()),
                () -> SensitivityDocument.SHAPE.fields(sensitivity, words.random()),
                warnings,
                provenance);
    }

    private Headline headline() {
        List<SwingEffect> most = sensitivity.swings().byStrip();
        String word = most.isEmpty() ? "NOTHING IS SHOWN TO CHANGE THE MARGIN" : "MOST SENSITIVE";
        return new Headline(Tone.NEUTRAL, word, swings.headline());
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        CauseWords.of(sensitivity).ifPresent(advice::add);
        swings.share().ifPresent(advice::add);
        advice.addAll(variance.sentences());
        advice.addAll(swings.remarks());
        return advice;
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of(
                swings.measure(), swings.present(), sensitivity.swings().atTarget() ? atTarget() : ""));
        if (sensitivity.swings().measure() == ChangeMeasure.MARGIN) {
            figures.add(Figure.of(
                    "share run through",
                    words.texts()
                            .value(Kind.SHARE, sensitivity.swings().share())
                            .besides(sensitivity.target()),
                    "target " + Texts.target(sensitivity.target())));
        }
        variance.figure().ifPresent(figures::add);
        return figures;
    }

    private String atTarget() {
        return "all but " + Texts.target(1 - sensitivity.target()) + " have more";
    }

    private String basis() {
        String swung = words.basis(
                sensitivity.request(),
                sensitivity.chance() ? sensitivity.request().run().replications() : 1,
                "value tried");
        return sensitivity.samples() == 0
                ? swung
                : swung + "; shares of variance from " + Texts.count(sensitivity.samples()) + " x "
                        + Texts.count(sensitivity.sampleChanges()) + " coil changes, and as many again for each source";
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add("Each input was changed alone, low and high, all others as they are; where no range was stated, by "
                + words.texts().share(usual)
                + " of the value to either side, whole numbers by one. An end that the line does not allow is shown as such. An input that"
                + " is zero has no usual range, and one that only sums up another is left out.");
        account.add(
                sensitivity.swings().measure() == ChangeMeasure.MARGIN
                        ? "Margin is the strip left above the level at which the process slows or stops; a shortfall is negative,"
                                + " calculated with the process kept at its rated speed. "
                                + (sensitivity.swings().atTarget()
                                        ? "At the target stands the margin that all but the allowed share of coil changes have."
                                        : "The run is too short for the margin at the target, which would take 25 coil changes"
                                                + " beyond it; the mean is taken instead.")
                        : "Without an accumulator there is no margin; what is compared is the time at the rated speed that a coil change"
                                + " costs the process.");
        if (sensitivity.chance()) {
            account.add(
                    "All were compared under the same random numbers, coil change by coil change: a joint that is rejected in one run"
                            + " and not in another does not shift the random numbers of later ones. An effect counts as shown when it differs"
                            + " from none at a level that leaves all comparisons together 5 % of error (Bonferroni).");
        }
        if (sensitivity.samples() > 0) {
            account.add(
                    "The random numbers of each source were exchanged over the whole run, those of all others kept. First-order indices"
                            + " (what a source carries by itself) by the estimator of Saltelli and others, Computer Physics Communications"
                            + " 181, 2010; total indices (also together with others) by that of Jansen, Computer Physics Communications"
                            + " 117, 1999; both summed over coil changes. What differs between coil changes by plan, such as a schedule,"
                            + " is no variance here. Intervals are 95 %, by the jackknife over replications.");
        }
        return account;
    }
}
