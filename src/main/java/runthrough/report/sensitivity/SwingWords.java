package runthrough.report.sensitivity;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.sensitivity.Change;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.SwingEffect;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.sensitivity.Swings;

/**
 * Says what moving inputs one at a time does.
 *
 * @param swings what was found
 * @param texts for numbers
 */
record SwingWords(Swings swings, Texts texts) {
    private static final int NAMED = 3;

    private boolean margin() {
        return swings.measure() == ChangeMeasure.MARGIN;
    }

    /** What is looked at: the margin at the target, the mean margin, or the time lost. */
    String measure() {
        return margin() ? swings.atTarget() ? "margin at the target" : "mean margin" : "time lost at each coil change";
    }

    /** Its value for the line as it is; a margin with the digits that every command gives it. */
    Value present() {
        return margin() ? texts.margin(Kind.LENGTH, swings.strip().mean()) : texts.value(Kind.TIME, swings.strip());
    }

    /** The inputs that move the margin or lost time most, behind "MOST SENSITIVE"; the share where nothing moves those. */
    String headline() {
        List<SwingEffect> most = swings.byStrip();
        if (most.isEmpty()) {
            return swings.byShare().isEmpty()
                    ? "No input is shown to change the " + measure() + (margin() ? " or the share run through." : ".")
                    : shareMoves();
        }
        SwingEffect first = most.get(0);
        return "to " + stripPart(first) + (isMore(first) ? " to the " : " of the ") + measure()
                + most.stream()
                        .limit(NAMED)
                        .skip(1)
                        .map(effect -> "; " + stripPart(effect))
                        .collect(Collectors.joining())
                + ".";
    }

    /** The inputs that move the share run through most; empty where there is no share to move. */
    Optional<String> share() {
        return !margin() || swings.byStrip().isEmpty() ? Optional.empty() : Optional.of(shareMoves());
    }

    private String shareMoves() {
        return swings.byShare().isEmpty()
                ? "No input is shown to change the share run through."
                : "Sensitivity of the share run through: "
                        + swings.byShare().stream()
                                .limit(NAMED)
                                .map(SwingWords::sharePart)
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    private String stripPart(SwingEffect effect) {
        String verb = isMore(effect) ? "adds" : margin() ? "costs" : "saves";
        return moved(effect, further(effect, AtEnd::strip)) + " " + verb + " " + amount(Math.abs(by(effect)));
    }

    private static boolean isMore(SwingEffect effect) {
        return by(effect) > 0;
    }

    private static double by(SwingEffect effect) {
        return further(effect, AtEnd::strip).strip().orElseThrow().by().mean();
    }

    private static String sharePart(SwingEffect effect) {
        AtEnd at = further(effect, AtEnd::share);
        double by = at.share().orElseThrow().by().mean();
        return moved(effect, at) + " " + (by < 0 ? "costs " : "adds ") + Notation.POINTS.number(Math.abs(by))
                + " percentage points";
    }

    private static String moved(SwingEffect effect, AtEnd at) {
        return InputName.of(effect.swing().path()) + ": " + at.end().text() + " instead of "
                + effect.swing().present();
    }

    private String amount(double si) {
        return margin() ? texts.length(si) : texts.time(si);
    }

    private static AtEnd further(SwingEffect effect, Function<AtEnd, Optional<Change>> what) {
        return reach(what.apply(effect.low())) >= reach(what.apply(effect.high())) ? effect.low() : effect.high();
    }

    private static double reach(Optional<Change> change) {
        return change.filter(Change::shown).map(by -> Math.abs(by.by().mean())).orElse(-1.0);
    }

    /** What else must be known of the swings. */
    List<String> remarks() {
        int still = still().size();
        return still == 0
                ? List.of()
                : List.of(still + " of " + swings.effects().size()
                        + " inputs are not shown to change anything within their ranges; the table names them.");
    }

    /** Inputs that could be moved and are not shown to change anything. */
    List<SwingEffect> still() {
        return swings.effects().stream()
                .filter(effect -> !effect.isShown() && possible(effect))
                .toList();
    }

    private static boolean possible(SwingEffect effect) {
        return effect.low().strip().isPresent() || effect.high().strip().isPresent();
    }
}
