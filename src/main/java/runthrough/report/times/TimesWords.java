package runthrough.report.times;

import java.util.List;
import java.util.stream.Collectors;
import runthrough.plant.Distribution;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.report.described.DistributionText;
import runthrough.report.described.DistributionYaml;
import runthrough.report.described.InputTexts;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;
import runthrough.study.fitting.Recommendation;

/** What  shows, in words. */
final class TimesWords {
    private static final int DIGITS = 3;
    private static final InputTexts TEXTS = new InputTexts(UnitSystem.METRIC);

    private TimesWords() {}

    static String number(double value) {
        return Numbers.text(value, DIGITS);
    }

    static String seconds(double value) {
        return number(value) + " s";
    }

    /** A probability, never shown as nothing. */
    static String p(double p) {
        return p < 0.001 ? "< 0.001" : Numbers.text(p, 2);
    }

    static String percent(double share) {
        return number(100 * share) + " %";
    }

    static String list(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** A distribution with its numbers. */
    static String distribution(Distribution distribution) {
        return DistributionText.of(distribution, Kind.TIME, TEXTS);
    }

    /** Whether ratings were applied. */
    static String rating(TimesResult result) {
        boolean rated = result.statistics().sheet().isRated();
        if (result.basic()) {
            return "basic times: observed times x rating / 100" + (rated ? "." : ", all rated 100.");
        }
        return "times as observed" + (rated ? "; ratings not applied." : ".");
    }

    /** What to simulate with, as a scenario has it but to fewer digits, and why. */
    static String choice(ElementFits fits) {
        String distribution = fits.recommendation().reason() == Recommendation.Reason.FITS
                ? DistributionYaml.request(fits.distribution()) + "; "
                : "";
        return distribution + reason(fits);
    }

    /** Why a distribution, or the observations, should be taken. */
    static String reason(ElementFits fits) {
        Recommendation choice = fits.recommendation();
        return switch (choice.reason()) {
            case FITS -> fits(choice);
            case CONSTANT -> "all times are the same.";
            case TOO_FEW ->
                "the observations as they are; fewer than " + Recommendation.FEWEST
                        + " times tell no distribution from another.";
            case TOO_COARSE ->
                "the observations as they are; the watch was read too coarsely to tell distributions apart.";
            case NOTHING_FITS ->
                "the observations as they are; no distribution fits"
                        + fits.candidates().stream()
                                .findFirst()
                                .map(best ->
                                        ", the nearest, " + best.distribution().label() + ", with p = " + p(best.p1()))
                                .orElse("")
                        + ".";
        };
    }

    private static String fits(Recommendation choice) {
        Candidate best = choice.distribution().orElseThrow();
        String others = choice.others().stream()
                .map(other -> other.distribution().label())
                .collect(Collectors.joining(", "));
        return best.distribution().label() + " fits best (p = " + p(best.p1()) + ", AICc "
                + Numbers.fixed(best.aicc(), 1) + ")" + (others.isEmpty() ? "." : "; about as good: " + others + ".");
    }
}
