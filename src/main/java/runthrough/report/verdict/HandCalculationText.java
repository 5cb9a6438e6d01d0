package runthrough.report.verdict;

import java.util.Locale;
import java.util.Optional;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Step;
import runthrough.handcalc.Storage;
import runthrough.handcalc.Term;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.TextLines;
import runthrough.report.Texts;

/** The hand calculation as text: the limits with their margins first, then each step with its numbers put in. */
final class HandCalculationText {
    private static final int COLUMN = 24;

    private final HandCalculation hand;
    private final Texts texts;
    private final CoherentUnits coherent;
    private final TextLines lines;

    private HandCalculationText(RunThroughResult result, TextLines lines) {
        this.hand = result.handCalculation();
        this.texts = result.texts();
        this.coherent = new CoherentUnits(result.system());
        this.lines = lines;
    }

    /** What there is against what is needed. */
    static void limits(RunThroughResult result, TextLines lines) {
        new HandCalculationText(result, lines).limits();
    }

    /** The whole calculation, with its numbers put in. */
    static void steps(RunThroughResult result, TextLines lines) {
        new HandCalculationText(result, lines).steps();
    }

    private void limits() {
        lines.paragraph("By hand, with mean times" + ofCoil(hand) + ":", 0);
        hand.storage().ifPresent(this::storage);
        hand.standstill().ifPresent(standstill -> {
            row("strip stands", texts.time(standstill.standing()), Optional.empty());
            row("lost at a coil change", texts.length(standstill.lostMetres()), Optional.empty());
            row("output", texts.of(Kind.RATE_LENGTH, standstill.output()), Optional.empty());
        });
        row("coil run", texts.time(hand.coilRun()), Optional.empty());
        row("time to prepare", texts.time(hand.preparationTime().given()), Optional.of(hand.preparationTime()));
        hand.limitingFactor().ifPresent(limit -> row("binding", named(limit), Optional.empty()));
    }

    private void steps() {
        lines.paragraph("The hand calculation" + ofCoil(hand) + ":", 0);
        hand.givens().forEach(this::given);
        hand.steps().forEach(this::step);
    }

    private void storage(Storage storage) {
        row("strip drawn", texts.length(storage.stripDrawn()), Optional.empty());
        row("capacity", texts.length(storage.capacity().given()), Optional.of(storage.capacity()));
        row("longest joint time", texts.time(storage.jointTime().given()), Optional.of(storage.jointTime()));
        row("fastest process speed", texts.speed(storage.speed().given()), Optional.of(storage.speed()));
        storage.refill()
                .ifPresent(refill -> row("refill time", texts.time(refill.timeFromRelease()), Optional.empty()));
        storage.coilStrip()
                .ifPresent(strip -> row("strip before change", texts.length(strip.given()), Optional.of(strip)));
    }

    private void row(String label, String value, Optional<Margin> margin) {
        lines.row(label, value + margin.map(m -> ", " + against(m, texts)).orElse(""), COLUMN);
    }

    private void given(Term term) {
        lines.row(term.symbol() + " = " + coherent.text(term), term.name(), COLUMN);
    }

    private void step(Step step) {
        lines.line(step.result().name());
        lines.paragraph("  " + step.result().symbol() + " = " + step.formula(), 6);
        if (!FormulaText.isPlain(step)) {
            lines.paragraph("    = " + coherent.numbers(step), 6);
        }
        lines.paragraph("    = " + coherent.text(step.result()), 6);
    }

    /** What a margin says: "61.2 m needed, 10.8 m to spare". */
    static String against(Margin margin, Texts texts) {
        Notation unit = texts.notation(margin.kind(), Math.max(finite(margin.given()), finite(margin.needed())));
        return unit.text(margin.needed()) + " needed, " + unit.text(Math.abs(margin.spare()))
                + (margin.isEnough() ? " to spare" : " missing");
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? Math.abs(value) : 0;
    }

    /** Which coil the hand calculation is for, where there is a choice. */
    static String ofCoil(HandCalculation hand) {
        return hand.kinds() == 1
                ? ""
                : " for the coil that is hardest on the line, " + hand.coil().name();
    }

    static String named(Limit limit) {
        return limit.name().toLowerCase(Locale.ROOT);
    }
}
