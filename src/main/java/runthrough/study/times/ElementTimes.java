package runthrough.study.times;

import java.util.Optional;
import runthrough.study.statistics.Moments;
import runthrough.study.statistics.Sample;
import runthrough.timestudy.TimeSheet;
import runthrough.timestudy.TimedElement;

/**
 * The times of one element.
 *
 * @param element of the sheet
 * @param gaps rows in which it was not timed
 * @param moments number, mean and standard deviation (s)
 * @param sample its times in order of size (s)
 * @param step to which the watch was read (s), {@code > 0}; 0 when the times do not show one
 * @param outliers by {@link Outliers#RULE}
 * @param trend over the sheet; empty with fewer than {@value Trend#FEWEST} times
 */
public record ElementTimes(
        TimedElement element,
        int gaps,
        Moments moments,
        Sample sample,
        double step,
        Outliers outliers,
        Optional<Trend> trend) {

    /** The times of element {@code i} of {@code sheet}, of which there must be one. */
    static ElementTimes of(TimeSheet sheet, int i) {
        double[] times = sheet.times(i);
        double step = ReadingStep.of(times);
        return new ElementTimes(
                sheet.elements().get(i),
                sheet.rows().size() - times.length,
                Moments.of(times),
                Sample.of(times),
                step,
                Outliers.of(sheet, i, step),
                Trend.of(sheet, i));
    }

    /** How many times there are. */
    public int n() {
        return moments.n();
    }

    /** Coefficient of variation: standard deviation over mean; NaN for a single time, and where all times are 0. */
    public double cv() {
        return moments.sd() / moments.mean();
    }
}
