package runthrough.report.sensitivity;

import java.util.List;
import java.util.Optional;
import runthrough.report.Figure;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.VarianceShares;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;

/** Says which random sources have the largest shares in the variance of what a line gives. */
final class VarianceWords {
    private final List<VarianceShares> randomness;

    VarianceWords(List<VarianceShares> randomness) {
        this.randomness = randomness;
    }

    /** A sentence or two for each measure. */
    List<String> sentences() {
        return randomness.isEmpty()
                ? List.of("Nothing in this line is random: there is no variance to attribute.")
                : randomness.stream()
                        .filter(shares -> shares.measure() != ChangeMeasure.JOINT_CYCLE_TIME)
                        .map(this::sentence)
                        .toList();
    }

    private String sentence(VarianceShares shares) {
        String what = name(shares.measure());
        if (!shares.varies()) {
            return shares.measure() == ChangeMeasure.RUN_THROUGH
                    ? "Every coil change ended alike, whatever the random numbers: running through has no variance to attribute."
                    : "Random numbers never changed " + what + ": it has no variance to attribute.";
        }
        Optional<Share> main = shares.main();
        if (main.isEmpty()) {
            return "No random source has a significant share in the variance of " + what
                    + ". More samples would show more.";
        }
        String text = "The largest share in the variance of " + what + " is that of " + part(shares, main.get());
        return text
                + next(shares, main.get())
                        .map(second -> "; the next that of " + part(shares, second))
                        .orElse("")
                + "." + together(shares);
    }

    /** First-order, and where sources act together the total, too. */
    private String part(VarianceShares shares, Share share) {
        String text = share.source().label() + ": first-order "
                + VarianceTables.within(share.index().first()).known();
        return shares.isTogetherShown() ? text + ", total " + text(share.index().total()) : text;
    }

    private static Optional<Share> next(VarianceShares shares, Share most) {
        return shares.sources().stream()
                .filter(share -> !share.equals(most) && share.index().isShown())
                .findFirst();
    }

    private String together(VarianceShares shares) {
        if (!shares.isTogetherShown()) {
            return "";
        }
        return " First-order shares add up to " + text(shares.firstOrders())
                + "; the rest comes from sources acting together.";
    }

    private static String text(Estimate index) {
        return VarianceTables.within(index).text();
    }

    /** The source with the largest share in the variance of the first measure, where that is shown. */
    Optional<Figure> figure() {
        return randomness.stream()
                .findFirst()
                .flatMap(shares -> shares.main()
                        .map(main -> Figure.of(
                                "largest random source",
                                VarianceTables.within(main.index().total()),
                                main.source().label() + ", total share in the variance of " + name(shares.measure()))));
    }

    static String name(ChangeMeasure measure) {
        return switch (measure) {
            case MARGIN -> "the margin";
            case RUN_THROUGH -> "running through";
            case JOINT_CYCLE_TIME -> "the joint cycle time";
            case LOST_TIME -> "the time lost at a coil change";
        };
    }
}
