package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runthrough.chart.verdict.Charts;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Refill;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.report.described.InputTexts;
import runthrough.study.Verdict;

/** Puts a result into the page that the template lays out. */
public final class PageMaker {
    private final RunThroughResult result;
    private final Verdict verdict;
    private final HandCalculation hand;
    private final Texts texts;
    private final CoherentUnits coherent;

    private PageMaker(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.hand = result.handCalculation();
        this.texts = result.texts();
        this.coherent = new CoherentUnits(result.system());
    }

    /** The page of {@code result}. */
    public static ReportPage page(RunThroughResult result) {
        return new PageMaker(result).page();
    }

    /** The same without what takes long to draw. */
    static AnswerSheet sheet(RunThroughResult result) {
        return new PageMaker(result).sheet();
    }

    private AnswerSheet sheet() {
        Diagnosis diagnosis = new Diagnosis(result);
        return new AnswerSheet(mark(), named(), messages(diagnosis), hand());
    }

    private ReportPage page() {
        SimulationRequest request = result.study().request();
        Diagnosis diagnosis = new Diagnosis(result);
        return new ReportPage(
                request.title(),
                Stream.concat(request.notes().stream(), result.provenance().changed().stream())
                        .toList(),
                result.provenance().date().orElse(""),
                mark(),
                named().stream().map(AnswerSheet.Named::figure).toList(),
                messages(diagnosis),
                Charts.of(result.study()),
                hand(),
                ResultTables.of(result),
                InputTables.of(request),
                result.warnings(),
                method(),
                provenance());
    }

    private Headline mark() {
        VerdictHeadline headline = VerdictHeadline.of(result);
        return new Headline(
                Headline.Tone.valueOf(headline.mark().name()),
                headline.mark().word(),
                headline.sentence(),
                headline.further().orElse(""));
    }

    private static ReportPage.Messages messages(Diagnosis diagnosis) {
        return new ReportPage.Messages(diagnosis.binds(), diagnosis.spare().orElse(""), diagnosis.changes());
    }

    private List<AnswerSheet.Named> named() {
        List<AnswerSheet.Named> figures = new ArrayList<>();
        figures.add(new AnswerSheet.Named(
                AnswerSheet.Which.SHARE,
                Figure.words(
                        "run through", texts.share(verdict.shareRunThrough().mean()), sure())));
        verdict.spare()
                .ifPresent(spare -> figures.add(new AnswerSheet.Named(
                        AnswerSheet.Which.SPARE,
                        Figure.words(
                                spare.metres() >= 0 ? "to spare at the target" : "missing at the target",
                                texts.length(Math.abs(spare.metres())),
                                "or " + texts.time(Math.abs(spare.seconds())) + ", or "
                                        + texts.speed(Math.abs(spare.speed()))))));
        Verdict.Stoppages stoppages = verdict.stoppages();
        figures.add(new AnswerSheet.Named(
                AnswerSheet.Which.STOPS,
                Figure.words(
                        "stops " + result.want() + " per 8 h",
                        texts.mean(stoppages.starvedPerShift()),
                        texts.interval(stoppages.starvedPerShift()).orElse(""))));
        figures.add(new AnswerSheet.Named(
                AnswerSheet.Which.LOST,
                Figure.words(
                        "lost " + result.want() + " per 8 h",
                        texts.time(stoppages.lostTimePerShift().mean()),
                        texts.length(stoppages.lostMetresPerShift().mean()) + " of strip")));
        figures.add(new AnswerSheet.Named(
                AnswerSheet.Which.JOINT,
                Figure.words(
                        result.line().practice().hasJoiner() ? "joint time, on average" : "rethreading, on average",
                        texts.time(verdict.joint().time().mean().mean()),
                        "95 % at most " + texts.time(verdict.joint().time().p95()))));
        figures.add(new AnswerSheet.Named(
                AnswerSheet.Which.OUTPUT,
                Figure.words(
                        "output",
                        texts.mean(Kind.RATE_LENGTH, verdict.output().speed()),
                        texts.of(Kind.RATE_MASS, verdict.output().massFlow().mean()) + ", "
                                + texts.share(verdict.output().utilisation().mean()) + " of rated")));
        return figures;
    }

    private String sure() {
        return result.isOneStrip()
                ? "entry and process are one strip"
                : texts.interval(Kind.SHARE, verdict.shareRunThrough()).orElse("nothing is left to chance");
    }

    private ReportPage.Hand hand() {
        List<ReportPage.Given> givens = hand.givens().stream()
                .map(term -> new ReportPage.Given(
                        FormulaText.symbol(term), InputTexts.raised(coherent.text(term)), term.name()))
                .toList();
        List<ReportPage.Step> steps = hand.steps().stream()
                .map(step -> new ReportPage.Step(
                        step.result().name(),
                        FormulaText.symbols(step),
                        FormulaText.numbers(step, coherent),
                        InputTexts.raised(coherent.text(step.result()))))
                .toList();
        String coil = hand.kinds() == 1 ? "" : hand.coil().name();
        return new ReportPage.Hand(coil, limits(), givens, steps);
    }

    private Table limits() {
        List<List<String>> rows = new ArrayList<>();
        hand.storage().ifPresent(storage -> {
            rows.add(limit("Capacity of the accumulator", storage.capacity()));
            rows.add(limit("Joint time: longest, and on average", storage.jointTime()));
            rows.add(limit("Process speed: fastest, and rated", storage.speed()));
            storage.coilStrip().ifPresent(strip -> rows.add(limit("Strip of a coil to fill up on", strip)));
        });
        rows.add(limit("Time to prepare a coil", hand.preparationTime()));
        hand.emptying().ifPresent(margin -> rows.add(limit("Speed at which the accumulator can give strip", margin)));
        hand.bending()
                .forEach(check -> rows.add(limit(
                        "Bending radius, strip of " + texts.of(Kind.THICKNESS, check.thickness()), check.radius())));
        hand.storage().ifPresent(storage -> {
            rows.add(fact("Strip drawn at a coil change", texts.length(storage.stripDrawn())));
            storage.refill()
                    .map(Refill::timeFromRelease)
                    .ifPresent(time -> rows.add(fact("Refill, from the release of the joint", texts.time(time))));
        });
        hand.standstill().ifPresent(standstill -> {
            rows.add(fact("Strip stands at a coil change", texts.time(standstill.standing())));
            rows.add(fact("Strip not run at a coil change", texts.length(standstill.lostMetres())));
            rows.add(fact("Output", texts.of(Kind.RATE_LENGTH, standstill.output())));
        });
        rows.add(fact("From one coil change to the next", texts.time(hand.coilRun())));
        hand.limitingFactor().ifPresent(limit -> rows.add(fact("Nearest limit", HandCalculationText.named(limit))));
        return Table.words(
                "What there is and what is needed", List.of("", "There is", "Needed", "To spare"), rows, true);
    }

    private List<String> limit(String name, Margin margin) {
        Notation unit = texts.notation(margin.kind(), Math.max(finite(margin.given()), finite(margin.needed())));
        String spare = unit.text(Math.abs(margin.spare()));
        return List.of(
                name,
                unit.text(margin.given()),
                unit.text(margin.needed()),
                margin.isEnough() ? spare : spare + " missing");
    }

    private static List<String> fact(String name, String value) {
        return List.of(name, value, "", "");
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? Math.abs(value) : 0;
    }

    private ReportPage.Method method() {
        RunPlan run = result.study().request().run();
        String extent = run.extent() instanceof RunPlan.Extent.Time time
                ? texts.time(time.duration()) + " each"
                : Texts.count(((RunPlan.Extent.Changes) run.extent()).changes()) + " coil changes each";
        return new ReportPage.Method(
                !result.isOneStrip(),
                !result.line().practice().hasJoiner(),
                verdict.chance(),
                run.replications() > 1,
                (run.replications() == 1 ? "one replication of " : run.replications() + " replications of ")
                        + extent.replace(" each", run.replications() == 1 ? "" : " each"));
    }

    private List<Figure> provenance() {
        List<Figure> rows = new ArrayList<>();
        result.provenance().date().ifPresent(date -> rows.add(Figure.words("Date", date, "")));
        rows.add(Figure.words("Program", result.provenance().program(), ""));
        result.provenance()
                .fingerprint()
                .ifPresent(digits -> rows.add(Figure.words("SHA-256 of the scenario file", digits, "")));
        rows.add(Figure.words(
                "Seed", Long.toString(result.study().request().run().seed()), ""));
        return rows;
    }
}
