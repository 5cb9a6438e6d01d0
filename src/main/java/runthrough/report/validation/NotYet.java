package runthrough.report.validation;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Outside values that wait for the feature they check. One is listed for as long as no check with its short names is recorded,
 * so that the page looks no more complete, and no less, than it is.
 */
public enum NotYet {
    GOODNESS_OF_FIT(
            "C[1-6]",
            "Critical values of goodness-of-fit tests: Kolmogorov-Smirnov, Anderson-Darling (M. A. Stephens, 1974 and 1977)",
            "fitting distributions to measured times"),
    MAXIMUM_LIKELIHOOD(
            "M[1-7]",
            "Maximum-likelihood fits: failure times of the NIST/SEMATECH e-Handbook, 8.4.1.3, and ball bearings of J. Lieblein "
                    + "and M. Zelen, 1956",
            "fitting distributions to measured times"),
    SAMPLE_SIZE(
            "T[1-4]",
            "Sample size and standard time of a work study (Introduction to Work Study, International Labour Office, 1992)",
            "time studies"),
    PAYBACK(
            "E[1-4]",
            "Payback and present value (S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995)",
            "the payback of a change to the line");

    private final Pattern ids;
    private final String what;
    private final String comesWith;

    NotYet(String ids, String what, String comesWith) {
        this.ids = Pattern.compile(ids);
        this.what = what;
        this.comesWith = comesWith;
    }

    /** Those of which {@code records} hold no check. */
    static List<NotYet> beside(List<Recorded> records) {
        return Arrays.stream(values())
                .filter(later -> records.stream()
                        .noneMatch(recorded -> later.ids.matcher(recorded.id()).matches()))
                .toList();
    }

    /** What will be checked, and against what. */
    public String what() {
        return what;
    }

    /** The feature it waits for. */
    public String comesWith() {
        return comesWith;
    }
}
