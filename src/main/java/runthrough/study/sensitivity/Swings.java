package runthrough.study.sensitivity;

import java.util.Comparator;
import java.util.List;
import runthrough.study.cause.NamedCauses;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.statistics.Estimate;

/**
 * What moving inputs one at a time does.
 *
 * @param measure that was looked at beside the share run through: the margin, or the lost time where there is none
 * @param atTarget whether it is the margin at the target, which all but the allowed share of coil changes have; else a mean
 * @param strip the measure of the line as it is (m or s)
 * @param share of coil changes that run through, of the line as it is
 * @param effects in the order of the inputs
 * @param causes what coil changes of the line as it is that did not run through are attributed to, most of them first
 */
public record Swings(
        ChangeMeasure measure,
        boolean atTarget,
        Estimate strip,
        Estimate share,
        List<SwingEffect> effects,
        List<NamedCauses.Count> causes) {

    /** Metres or seconds that differ by less than this part are the same but for rounding. */
    private static final double ROUNDING = 1e-9;

    public Swings {
        effects = List.copyOf(effects);
        causes = List.copyOf(causes);
    }

    /** Those that are shown to move the margin or lost time, the furthest first. */
    public List<SwingEffect> byStrip() {
        return effects.stream()
                .filter(effect -> effect.stripReach() > 0)
                .sorted(Comparator.comparingDouble(SwingEffect::stripReach).reversed())
                .toList();
    }

    /** Those that are shown to move the share run through, the furthest first. */
    public List<SwingEffect> byShare() {
        return effects.stream()
                .filter(effect -> effect.shareReach() > 0)
                .sorted(Comparator.comparingDouble(SwingEffect::shareReach).reversed())
                .toList();
    }

    /** The same without those that stand for several inputs where they do just what a single input does. */
    Swings withoutRepeats() {
        return new Swings(
                measure,
                atTarget,
                strip,
                share,
                effects.stream()
                        .filter(effect -> !effect.swing().composed()
                                || effects.stream()
                                        .filter(other -> !other.swing().composed())
                                        .noneMatch(other -> doTheSame(effect, other)))
                        .toList(),
                causes);
    }

    private static boolean doTheSame(SwingEffect one, SwingEffect other) {
        return one.isShown() && same(one.low(), other.low()) && same(one.high(), other.high());
    }

    private static boolean same(AtEnd one, AtEnd other) {
        return one.strip().isPresent()
                && other.strip().isPresent()
                && same(one.strip().get(), other.strip().get())
                && one.share().equals(other.share());
    }

    private static boolean same(Change one, Change other) {
        double size = Math.abs(one.by().mean());
        return Math.abs(one.by().mean() - other.by().mean()) <= ROUNDING * Math.max(1, size);
    }
}
