package runthrough.report.validation;

/** Outside values that wait for the feature they check, so that the page does not look more complete than it is. */
public enum NotYet {
    GOODNESS_OF_FIT(
            "Critical values of goodness-of-fit tests: Kolmogorov-Smirnov, Anderson-Darling (M. A. Stephens, 1974 and 1977)",
            "fitting laws to measured times"),
    MAXIMUM_LIKELIHOOD(
            "Maximum-likelihood fits: failure times of the NIST/SEMATECH e-Handbook, 8.4.1.3, and ball bearings of J. Lieblein "
                    + "and M. Zelen, 1956",
            "fitting laws to measured times"),
    SAMPLE_SIZE(
            "Sample size and standard time of a work study (Introduction to Work Study, International Labour Office, 1992)",
            "time studies"),
    PAYBACK(
            "Payback and present value (S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995)",
            "the payback of a change to the line"),
    HEAT_INPUT("Heat input of arc welds (EN 1011-1:2009, 8.7)", "welding data, of which only the travel speed is used");

    private final String what;
    private final String comesWith;

    NotYet(String what, String comesWith) {
        this.what = what;
        this.comesWith = comesWith;
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
