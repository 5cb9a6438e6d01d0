package runthrough.report.times;

import java.util.List;
import runthrough.report.Texts;
import runthrough.study.fitting.Recommendation;
import runthrough.study.times.Outliers;

/** How the numbers of a time-study sheet are computed, in words. */
final class TimesAccount {
    private TimesAccount() {}

    static List<String> paragraphs() {
        return List.of(
                "The standard deviation has the divisor n - 1; percentiles are by linear interpolation between the times in"
                        + " order of size. Gaps are left out element by element, nothing else ever is.",
                "Outliers: " + Outliers.RULE
                        + " (J. W. Tukey, Exploratory Data Analysis, 1977), 3 for far out. Times of work"
                        + " have a long right tail, of which fences on the times themselves would call much outlying.",
                "Trend: test of H. B. Mann (1945) and M. G. Kendall, slope of P. K. Sen (1968), with its interval. Of 20 elements"
                        + " without any trend, one is shown to have one by chance.",
                "Elements that go together: rank correlation of C. Spearman, its p by Student's t, allowing for all pairs by the"
                        + " method of S. Holm (1979). The joint cycle time of the rows as observed is set against that of elements"
                        + " resampled each from its own column; the interval of the difference is a bootstrap over rows.",
                "Distributions: lognormal, gamma, Weibull and exponential, without and with a shift, normal (conditioned on more than 0)"
                        + " and triangular, by maximum likelihood. A shift is a threshold below the least time: of the"
                        + " likelihood maximised over the other parameters, its local maximum, for next to the least time the"
                        + " likelihood grows without limit (A. C. Cohen, 1951; R. L. Smith, 1985). The shift of the exponential"
                        + " distribution is the unbiased one. A shift adds nothing to the normal and triangular distributions.",
                "Fit: distances of T. W. Anderson and D. A. Darling (A²) and of Kolmogorov and Smirnov (D). Their p and limits"
                        + " come from samples drawn from the distribution, rounded as the watch was read and fitted anew, since tables for"
                        + " known parameters do not hold for fitted ones. The same samples give the intervals.",
                "Choice: of the distributions whose A² is no farther than that of 95 % of their own samples, the one with the least AICc"
                        + " (C. M. Hurvich and C.-L. Tsai, 1989); a shifted one must be better by "
                        + Texts.number(Recommendation.AS_GOOD) + ". With fewer than " + Recommendation.FEWEST
                        + " times, or when none fits, the observations as they are. (AICc is not strict for the triangular distribution"
                        + " and near the threshold of shifted ones.)",
                "Enough: G. Kanawaty (ed.), Introduction to Work Study, 4th ed., ILO, 1992: n = (k / e √(n' Σx² - (Σx)²) / Σx)²."
                        + " Basic time is observed time x rating / 100; an allowance is a share of the basic time and added.");
    }
}
