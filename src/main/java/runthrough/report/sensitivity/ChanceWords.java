package runthrough.report.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.quantity.Numbers;
import runthrough.report.Figure;
import runthrough.report.StudyWords;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.write.CsvWriter;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.VarianceShares;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Shows which sources of chance carry the variance of what a line gives. */
final class ChanceWords {
    /** An index of less than this is rounding. */
    private static final double NEGLIGIBLE = 1e-6;

    private final List<VarianceShares> randomness;
    private final StudyWords words;

    ChanceWords(List<VarianceShares> randomness, StudyWords words) {
        this.randomness = randomness;
        this.words = words;
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
                    ? "Every coil change ended alike, whatever the random numbers: running through has no variance to share out."
                    : "Chance never moved " + what + ": it has no variance to share out.";
        }
        Optional<Share> main = shares.main();
        if (main.isEmpty()) {
            return "No source of chance differs significantly from having no part in the variance of " + what
                    + ": more samples would tell.";
        }
        String text =
                "The variance of " + what + " comes mostly from the random numbers of " + part(shares, main.get());
        return text
                + next(shares, main.get())
                        .map(second -> "; from that of " + part(shares, second))
                        .orElse("")
                + "." + together(shares);
    }

    /** Where sources act together: by itself, and in all. */
    private String part(VarianceShares shares, Share share) {
        String text = share.source().label() + ": " + known(share.index().first());
        return shares.isTogetherShown()
                ? text + " by itself, " + percent(share.index().total().mean()) + " with others"
                : text;
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
        return " By themselves all sources carry "
                + percent(shares.firstOrders().mean()) + "; the rest comes from sources acting together.";
    }

    /** The source that carries most of the first measure, where that is shown. */
    Optional<Figure> figure() {
        return randomness.stream()
                .findFirst()
                .flatMap(shares -> shares.main()
                        .map(main -> Figure.words(
                                "most chance in " + name(shares.measure()),
                                main.source().label(),
                                percent(main.index().total().mean()) + " of its variance")));
    }

    /** A table for each measure that varies. */
    List<Table> tables() {
        return randomness.stream()
                .filter(VarianceShares::varies)
                .map(this::table)
                .toList();
    }

    private Table table(VarianceShares shares) {
        String sd = shares.measure() == ChangeMeasure.RUN_THROUGH
                ? "mean " + words.texts().share(shares.mean())
                : "standard deviation "
                        + (shares.measure() == ChangeMeasure.MARGIN
                                ? words.texts().length(shares.sd())
                                : words.texts().time(shares.sd()));
        return Table.words(
                "Shares in the variance of " + name(shares.measure()) + " (" + sd + ")",
                List.of("source", "by itself", "also with others"),
                Stream.concat(
                                shares.sources().stream().map(this::row),
                                Stream.of(List.of("all by themselves", known(shares.firstOrders()), "")))
                        .toList(),
                true);
    }

    private List<String> row(Share share) {
        return List.of(
                share.source().label(),
                share.index().isFirstShown()
                        ? known(share.index().first())
                        : none(share.index().first()),
                share.index().isShown()
                        ? known(share.index().total())
                        : none(share.index().total()));
    }

    String csv() {
        List<List<String>> rows = new ArrayList<>();
        for (VarianceShares shares : randomness) {
            shares.sources().forEach(share -> rows.add(row(shares, share)));
        }
        return CsvWriter.of(
                List.of(
                        "measure",
                        "source of chance",
                        "first order",
                        "first order low",
                        "first order high",
                        "total",
                        "total low",
                        "total high"),
                rows);
    }

    private static List<String> row(VarianceShares shares, Share share) {
        Estimate first = share.index().first();
        Estimate total = share.index().total();
        return List.of(
                name(shares.measure()),
                CsvWriter.text(share.source().label()),
                CsvWriter.number(first.mean()),
                CsvWriter.number(low(first)),
                CsvWriter.number(high(first)),
                CsvWriter.number(total.mean()),
                CsvWriter.number(low(total)),
                CsvWriter.number(high(total)));
    }

    private static String name(ChangeMeasure measure) {
        return switch (measure) {
            case MARGIN -> "the margin";
            case RUN_THROUGH -> "running through";
            case JOINT_CYCLE_TIME -> "the joint cycle time";
            case LOST_TIME -> "the time lost at a coil change";
        };
    }

    /** What does not differ significantly from none, and how much it may be at most. */
    private static String none(Estimate index) {
        return index.interval()
                .map(Interval::high)
                .filter(high -> high > NEGLIGIBLE)
                .map(high -> "none shown (at most " + percent(high) + ")")
                .orElse("none");
    }

    private static String percent(double share) {
        return number(share) + " %";
    }

    /** Percent of an index; what the error of estimation takes below none or above all is neither. */
    private static String number(double index) {
        double percent = 100 * Math.max(0, Math.min(1, index));
        return percent < 10 ? Texts.number(percent) : Numbers.fixed(percent, 1);
    }

    private static String known(Estimate index) {
        return percent(index.mean())
                + index.interval()
                        .map(ends -> " (" + number(ends.low()) + " to " + number(ends.high()) + ")")
                        .orElse("");
    }

    private static double low(Estimate index) {
        return index.interval().map(Interval::low).orElse(Double.NaN);
    }

    private static double high(Estimate index) {
        return index.interval().map(Interval::high).orElse(Double.NaN);
    }
}
