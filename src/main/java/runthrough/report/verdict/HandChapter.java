package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.handcalc.Bearable;
import runthrough.handcalc.BearableSlowed;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.Derivation;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Preparation;
import runthrough.handcalc.Refill;
import runthrough.handcalc.Step;
import runthrough.handcalc.Storage;
import runthrough.handcalc.Term;
import runthrough.plant.CoilChange;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Chapter;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TextLines;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.verdict.AnswerSheet.Closed;
import runthrough.report.verdict.AnswerSheet.Given;
import runthrough.report.verdict.AnswerSheet.Worked;

/** The hand calculation: what is available against what is needed, then each step with its numbers put in. */
final class HandChapter {
    private static final int COLUMN = 24;
    private static final int INDENT = 6;
    private static final String CAPACITY = "accumulator capacity";
    private static final String SPEED = "fastest process speed";
    private static final String WITHOUT_SLOWING = ", without slowing";
    private static final String WITHOUT_STOP = ", without a stop";

    private final RunThroughResult result;
    private final HandCalculation hand;
    private final Texts texts;
    private final CoherentUnits coherent;

    HandChapter(RunThroughResult result) {
        this.result = result;
        this.hand = result.handCalculation();
        this.texts = result.texts();
        this.coherent = new CoherentUnits(result.system());
    }

    /** The coil that it is for; empty where there is one kind only. */
    String coil() {
        return hand.kinds() == 1 ? "" : hand.coil().name();
    }

    /** Which coil it is for; a coil without a name of its own is called coil, with its number. */
    private String forCoil() {
        String name = coil();
        return name.isEmpty() ? "" : " for " + (name.matches("coil( [0-9]+)?") ? "" : "coil ") + name;
    }

    Chapter chapter() {
        List<Chapter.Block> blocks = new ArrayList<>();
        blocks.add(new Chapter.Paragraph(
                "Closed forms, beside the simulation. They take every coil change as like the other: mean times, one process"
                        + " speed, and an accumulator that is full when the change begins. Where nothing is random and that"
                        + " holds, simulation and closed forms give the same numbers."));
        if (!coil().isEmpty()) {
            blocks.add(
                    new Chapter.Paragraph("It is for the kind of coil that is hardest on the line: " + coil() + "."));
        }
        blocks.add(new Chapter.Grid(limits()));
        Derivation all = new Derivation(hand.givens(), hand.steps());
        blocks.add(new Chapter.Heading("Line by line"));
        blocks.add(new Chapter.Paragraph("Every formula can be checked with a pocket calculator, in the units shown."));
        blocks.add(new Chapter.Grid(table(
                "It starts from",
                List.of("What", "Symbol", "Value"),
                givens(all).map(given -> List.of(Cell.of(given.name()), given.symbol(), Cell.of(given.value()))))));
        blocks.add(new Chapter.Grid(table(
                "Worked through",
                List.of("What", "Formula, and with its numbers", "Result"),
                steps(all).map(step -> List.of(Cell.of(step.name()), withNumbers(step), Cell.of(step.result()))))));
        return new Chapter("hand", "Hand calculation", blocks);
    }

    private static Table table(String caption, List<String> head, Stream<List<Cell>> rows) {
        return new Table(caption, head.stream().map(Column::words).toList(), rows.toList());
    }

    private static Cell withNumbers(Worked step) {
        List<Cell.Piece> pieces = new ArrayList<>(step.formula().pieces());
        if (!step.numbers().pieces().isEmpty()) {
            pieces.add(new Cell.Piece("= ", Cell.Style.NEXT_LINE));
            pieces.addAll(step.numbers().pieces());
        }
        return new Cell.Formula(pieces);
    }

    private Stream<Given> givens(Derivation derivation) {
        return derivation.givens().stream()
                .map(term -> new Given(
                        term.name(), new Cell.Formula(FormulaText.symbol(term)), Unit.raised(coherent.text(term))));
    }

    private Stream<Worked> steps(Derivation derivation) {
        return derivation.steps().stream()
                .map(step -> new Worked(
                        step.result().name(),
                        new Cell.Formula(FormulaText.symbols(step)),
                        new Cell.Formula(FormulaText.numbers(step, coherent)),
                        Unit.raised(coherent.text(step.result()))));
    }

    /** Each row of {@link #limits} with what leads to it. */
    List<Closed> closed() {
        return limits().rows().stream()
                .map(row -> {
                    Derivation leading = hand.leadingTo(Stream.of(row.get(1), row.get(2))
                            .flatMap(cell -> cell.value().stream())
                            .mapToDouble(Value::si)
                            .toArray());
                    return new Closed(
                            row, givens(leading).toList(), steps(leading).toList());
                })
                .toList();
    }

    /** What is available against what is needed; a negative margin is a shortfall. */
    Table limits() {
        List<List<Cell>> rows = new ArrayList<>();
        hand.storage().ifPresent(storage -> {
            boolean slows = storage.withoutSlowing().isPresent();
            borne(slows ? WITHOUT_SLOWING : "", storage.toRunThrough(), rows);
            storage.withoutStop().ifPresent(borne -> borne(borne, rows));
            beyondEntry(storage).ifPresent(top -> rows.add(fact("the entry runs no faster than", Kind.SPEED, top)));
            storage.coilStrip().ifPresent(strip -> rows.add(limit("strip of a coil to refill on", strip)));
        });
        rows.addAll(preparation());
        hand.emptying().ifPresent(margin -> rows.add(limit("speed at which the accumulator gives strip", margin)));
        hand.bending()
                .forEach(check -> rows.add(limit(
                        "bending radius, strip of " + texts.of(Kind.THICKNESS, check.thickness()), check.radius())));
        hand.storage().ifPresent(storage -> {
            rows.add(fact("strip drawn at a coil change", Kind.LENGTH, storage.stripDrawn()));
            storage.refill()
                    .map(Refill::timeFromRelease)
                    .ifPresent(time -> rows.add(fact("refill, from the release of the joint", Kind.TIME, time)));
        });
        hand.standstill().ifPresent(standstill -> {
            rows.add(fact("strip stands at a coil change", Kind.TIME, standstill.standing()));
            rows.add(fact("strip not run at a coil change", Kind.LENGTH, standstill.lostMetres()));
            rows.add(fact("gross output", Kind.RATE_LENGTH, standstill.output()));
        });
        rows.add(fact("from one coil change to the next", Kind.TIME, hand.coilRun()));
        hand.limitingFactor()
                .ifPresent(limit -> rows.add(List.of(
                        Cell.of("limiting factor, closed form" + (limit == Limit.CAPACITY ? which() : "")),
                        Cell.of(limit.name().toLowerCase(Locale.ROOT)),
                        Cell.none(),
                        Cell.none())));
        String ofCoil = (coil().isEmpty() ? "" : "," + forCoil()) + crew();
        return new Table(
                "Hand calculation with mean times" + ofCoil,
                List.of(
                        Column.words(""),
                        Column.numbers("Available"),
                        Column.numbers("Needed"),
                        Column.numbers("Margin")),
                rows);
    }

    /** Where the accumulator bears that the joint waits, the time until it does, and the time until the process must stop. */
    private List<List<Cell>> preparation() {
        Preparation preparation = hand.preparation();
        Margin toStop = hand.preparationTime();
        Margin toWait = new Margin(Kind.TIME, preparation.withoutWaiting(), preparation.needed());
        return toStop.given() == toWait.given()
                ? List.of(limit("time to prepare a coil", toStop))
                : List.of(
                        limit("time to prepare before the joint waits", toWait),
                        limit("time to prepare before the process stops", toStop));
    }

    /** Rule FORM-9 knows one crew. */
    private String crew() {
        CoilChange change = result.study().request().line().change();
        return change.shifts().isEmpty() ? "" : ", with the largest crew of any shift, " + change.crew();
    }

    /** What the accumulator bears: of a process that slows, for one of the two targets. */
    private void borne(String target, Bearable borne, List<List<Cell>> rows) {
        boolean isOne = target.isEmpty();
        rows.add(least(CAPACITY + target, borne.capacity()));
        rows.add(most(longestJoint() + (isOne ? ", and mean" : target), borne.jointCycleTime()));
        rows.add(most(SPEED + (isOne ? ", and rated" : target), borne.speed()));
    }

    private void borne(BearableSlowed borne, List<List<Cell>> rows) {
        if (Stream.of(borne.capacity(), borne.jointCycleTime(), borne.speed()).allMatch(Optional::isEmpty)) {
            rows.add(noForm("without a stop"));
            return;
        }
        String capacity = CAPACITY + WITHOUT_STOP;
        String joint = longestJoint() + WITHOUT_STOP;
        String speed = SPEED + WITHOUT_STOP;
        rows.add(borne.capacity().map(margin -> least(capacity, margin)).orElseGet(() -> noForm(capacity)));
        rows.add(borne.jointCycleTime().map(margin -> most(joint, margin)).orElseGet(() -> noForm(joint)));
        rows.add(borne.speed().map(margin -> most(speed, margin)).orElseGet(() -> noForm(speed)));
    }

    private String longestJoint() {
        return "longest " + result.joint();
    }

    private List<Cell> least(String name, Margin capacity) {
        Notation length = texts.notation(Kind.LENGTH);
        return limit(name, capacity, length, length.atLeast());
    }

    private List<Cell> most(String name, Margin margin) {
        return limit(
                name,
                margin,
                texts.notation(margin.kind(), margin.given()).atMost(),
                texts.notation(margin.kind(), margin.needed()));
    }

    private List<Cell> limit(String name, Margin margin, Notation given, Notation needed) {
        return List.of(
                Cell.of(name),
                Cell.of(Value.of(margin.given(), given)),
                Cell.of(Value.of(margin.needed(), needed)),
                Cell.of(texts.margin(margin.kind(), margin.spare())));
    }

    /** The entry's top speed where a fastest process speed is beyond it: the closed form knows nothing of it. */
    private OptionalDouble beyondEntry(Storage storage) {
        double top = result.study().request().line().entry().topSpeed();
        return Stream.concat(
                                Stream.of(storage.toRunThrough().speed()),
                                storage.withoutStop().flatMap(BearableSlowed::speed).stream())
                        .anyMatch(speed -> speed.given() > top)
                ? OptionalDouble.of(top)
                : OptionalDouble.empty();
    }

    /** The closed form assumes when the process slows; where that is not so, the simulation says what is borne. */
    private static List<Cell> noForm(String name) {
        return List.of(Cell.of(name), Cell.of("no closed form"), Cell.none(), Cell.none());
    }

    /** Of the two sets of a process that slows, the one for running through at the rated speed asks for more. */
    private String which() {
        return hand.storage().flatMap(Storage::withoutSlowing).isPresent() ? WITHOUT_SLOWING : "";
    }

    private List<Cell> limit(String name, Margin margin) {
        return limit(
                name,
                margin,
                texts.notation(margin.kind(), margin.given()).atMost(),
                texts.notation(margin.kind(), margin.needed()).atLeast());
    }

    private List<Cell> fact(String name, Kind kind, double si) {
        return List.of(Cell.of(name), Cell.of(texts.value(kind, si)), Cell.none(), Cell.none());
    }

    /** The whole calculation as text in plain ASCII. */
    String working() {
        TextLines lines = new TextLines();
        lines.paragraph("Hand calculation" + forCoil() + ":", 0);
        hand.givens().forEach(term -> given(term, lines));
        hand.steps().forEach(step -> step(step, lines));
        return lines.text();
    }

    private void given(Term term, TextLines lines) {
        lines.row(term.symbol() + " = " + coherent.text(term), term.name(), COLUMN);
    }

    private void step(Step step, TextLines lines) {
        lines.line(step.result().name());
        lines.paragraph("  " + step.result().symbol() + " = " + step.formula(), INDENT);
        if (!FormulaText.isPlain(step)) {
            lines.paragraph("    = " + coherent.numbers(step), INDENT);
        }
        lines.paragraph("    = " + coherent.text(step.result()), INDENT);
    }
}
