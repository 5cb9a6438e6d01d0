package runthrough.report.times;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import runthrough.plant.Distribution;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.UnitSystem;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.DistributionYaml;
import runthrough.report.described.InputTexts;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;
import runthrough.study.fitting.Recommendation;
import runthrough.study.times.JointTail;
import runthrough.study.times.Trend;

/** What  shows, in words. */
final class TimesWords {
    /** Slopes of a trend. */
    static final Notation SLOPE = Notation.SECONDS.called("s per coil change");

    private static final Texts TEXTS = new Texts(UnitSystem.METRIC, true);
    private static final InputTexts DISTRIBUTIONS = new InputTexts(UnitSystem.METRIC, Rounding.CERTAIN);

    private static final String OBSERVATIONS = "the observations as they are";

    private TimesWords() {}

    /** A time (s) in a sentence. */
    static String time(double seconds) {
        return TEXTS.time(seconds);
    }

    /** A number with its interval, where it has one. */
    static Value known(Notation notation, double si, double low, double high) {
        return TEXTS.found(notation, si, OptionalDouble.of(low), OptionalDouble.of(high));
    }

    static Value slope(Trend trend) {
        return known(Notation.SECONDS, trend.slope(), trend.low(), trend.high());
    }

    /** By how much longer joints are as observed than with elements drawn on their own. */
    static Value difference(JointTail.Percentile at) {
        return known(Notation.SECONDS, at.together() - at.apart(), at.low(), at.high());
    }

    /** A probability behind its letter: "= 0.017", or "< 0.001". */
    static String equal(double p) {
        return (p < Rounding.LEAST_PROBABILITY ? "" : "= ") + Notation.PROBABILITY.number(p);
    }

    /** A column of numbers that pages call {@code shown} and files {@code filed}. */
    static <T> void add(
            TableMaker<T> table, String shown, String filed, Notation notation, ToDoubleFunction<T> number) {
        table.with(
                        new Column(shown, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.PAGE),
                        row -> Cell.of(Value.of(number.applyAsDouble(row), notation)))
                .fileNumber(filed, notation, number);
    }

    static String list(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** A distribution with its numbers. */
    static String distribution(Distribution distribution) {
        return DISTRIBUTIONS.cell(Kind.TIME, distribution).text();
    }

    /** Whether ratings were applied. */
    static String rating(TimesResult result) {
        boolean rated = result.statistics().sheet().isRated();
        if (result.basic()) {
            return "basic times: observed times x rating / 100" + (rated ? "." : ", all rated 100.");
        }
        return "times as observed" + (rated ? "; ratings not applied." : ".");
    }

    /** What to simulate with: as a scenario has it but to fewer digits, to be copied, or in words. */
    static String choice(ElementFits fits) {
        return isDrawn(fits) ? DistributionYaml.request(fits.distribution()) : OBSERVATIONS;
    }

    private static boolean isDrawn(ElementFits fits) {
        return switch (fits.recommendation().reason()) {
            case FITS, CONSTANT -> true;
            case TOO_FEW, TOO_COARSE, NOTHING_FITS -> false;
        };
    }

    /** Why a distribution, or the observations, should be taken. */
    static String reason(ElementFits fits) {
        return (isDrawn(fits) ? "" : OBSERVATIONS + "; ") + why(fits);
    }

    /** The same where it is said already what is taken. */
    static String why(ElementFits fits) {
        Recommendation choice = fits.recommendation();
        return switch (choice.reason()) {
            case FITS -> fits(choice);
            case CONSTANT -> "all times are the same.";
            case TOO_FEW -> "fewer than " + Recommendation.FEWEST + " times tell no distribution from another.";
            case TOO_COARSE -> "the watch was read too coarsely to tell distributions apart.";
            case NOTHING_FITS ->
                "no distribution fits"
                        + fits.candidates().stream()
                                .findFirst()
                                .map(best -> ", the nearest, "
                                        + best.distribution().label() + ", with p " + equal(best.p1()))
                                .orElse("")
                        + ".";
        };
    }

    private static String fits(Recommendation choice) {
        Candidate best = choice.distribution().orElseThrow();
        String others = choice.others().stream()
                .map(other -> other.distribution().label())
                .collect(Collectors.joining(", "));
        return best.distribution().label() + " fits best (p " + equal(best.p1()) + ", AICc "
                + Notation.PLAIN.with(Rounding.CRITERION).number(best.aicc()) + ")"
                + (others.isEmpty() ? "." : "; about as good: " + others + ".");
    }
}
