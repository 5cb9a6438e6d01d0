package runthrough.chart.document;

import java.util.List;
import java.util.Optional;
import runthrough.quantity.UnitSystem;

/**
 * What the one picture of the whole answer shows.
 *
 * @param title of the scenario
 * @param sign of the verdict
 * @param word of the verdict
 * @param sentence of the verdict
 * @param target share of coil changes that should run through
 * @param system units of the user
 * @param shares the line as it is, and its alternatives; none where years are given
 * @param years the same, where no coil change of any of them runs through and shares say nothing
 * @param strip what coil changes draw; empty where nothing is stored
 */
public record SummaryData(
        String title,
        String sign,
        String word,
        String sentence,
        double target,
        UnitSystem system,
        List<Share> shares,
        List<InYear> years,
        Optional<Strip> strip) {

    public SummaryData {
        shares = List.copyOf(shares);
        years = List.copyOf(years);
    }

    /**
     * A share run through.
     *
     * @param name of the variant
     * @param today whether it is the line as it is
     * @param mean in [0, 1]
     * @param low end of its interval, or the mean
     * @param high end of its interval, or the mean
     * @param text the mean in words
     */
    public record Share(String name, boolean today, double mean, double low, double high, String text) {}

    /**
     * What a year comes to.
     *
     * @param name of the variant
     * @param today whether it is the line as it is
     * @param lost time lost to coil changes (s)
     * @param good output (kg)
     */
    public record InYear(String name, boolean today, Amount lost, Amount good) {}

    /**
     * An amount (SI).
     *
     * @param mean at least 0
     * @param low end of its interval, or the mean
     * @param high end of its interval, or the mean
     * @param text the mean in words
     */
    public record Amount(double mean, double low, double high, String text) {}

    /**
     * Strip that a coil change takes.
     *
     * @param usable what a full accumulator gives before the process must stop (m)
     * @param usableText the same in words
     * @param most the most that is pointed at (m)
     * @param marks what to point at, from little to much
     */
    public record Strip(double usable, String usableText, double most, List<Mark> marks) {
        public Strip {
            marks = List.copyOf(marks);
        }
    }

    /** A length of strip (m) to point at, with its words. */
    public record Mark(double metres, String text) {}
}
