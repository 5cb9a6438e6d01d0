/**
 * What may be said of a quantity from what was simulated: estimates with honest intervals, and percentiles.
 *
 * <p>Main types: {@link runthrough.study.statistics.Estimate} (a mean over replications and how well it is known), {@link
 * runthrough.study.statistics.Sample} and {@link runthrough.study.statistics.Summary} (all coil changes pooled), {@link
 * runthrough.study.statistics.Estimators} (how estimates are made), {@link
 * runthrough.study.statistics.Pairs} (how two variants under the same random numbers are held against each other), {@link
 * runthrough.study.statistics.RelativeHalfWidth} (whether one is as good as was asked for).
 *
 * <p>Units: those of what is measured. Shares are in [0, 1].
 *
 * <p>Invariants: an interval is never of zero width. Where replications did not differ, or there is only one, no Student-t
 * interval is given; shares and rates then have one from their pooled counts. What rests on few events has one from their
 * count ({@link runthrough.study.statistics.FewEvents}).
 *
 * <p>Sources: A. M. Law, "Simulation Modeling and Analysis", 4th ed., 2007, section 9.4 (independent replications); E. B.
 * Wilson, "Probable inference, the law of succession, and statistical inference", Journal of the American Statistical
 * Association 22, 1927; R. J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", The American Statistician
 * 50, 1996, definition 7 (percentiles). Cited from memory.
 */
@NullMarked
package runthrough.study.statistics;

import org.jspecify.annotations.NullMarked;
