package runthrough.report.times;

import java.util.List;
import java.util.Optional;
import runthrough.study.fitting.ElementFits;
import runthrough.study.times.SampleSize;
import runthrough.study.times.SheetStatistics;

/**
 * All that was found out about a time-study sheet.
 *
 * @param statistics of the sheet
 * @param fits one for each element, in order
 * @param sizes how many observations each element takes, in order
 * @param basic whether ratings were applied, so that all times are basic times
 * @param allowance as a share of basic time, where standard times are asked for
 * @param leftOut numbers of the rows that the user left out
 * @param timed when, in the user's words, where given
 * @param seed of the random numbers
 */
public record TimesResult(
        SheetStatistics statistics,
        List<ElementFits> fits,
        List<SampleSize> sizes,
        boolean basic,
        Optional<Double> allowance,
        List<Integer> leftOut,
        Optional<String> timed,
        long seed) {

    public TimesResult {
        fits = List.copyOf(fits);
        sizes = List.copyOf(sizes);
        leftOut = List.copyOf(leftOut);
    }

    /** The name of element {@code i} with its part of the coil change, where the sheet gives one. */
    String label(int i) {
        return statistics.sheet().elements().get(i).label();
    }

    int rows() {
        return statistics.sheet().rows().size();
    }
}
