package runthrough.report.validation;

/** Outside values of the same sources that say nothing about this program, and why. */
public enum LeftOut {
    FAILURES_BY_TIME(
            "Two machines that fail per running minute or by the clock, and the mixed case; the fluid queue with joints by the "
                    + "clock",
            "a coil runs out by its metres, also while the entry runs slowly, and process downtime follows its running "
                    + "time: a line that fails otherwise cannot be described. The values differ by up to 8 %; that the program "
                    + "gives those of its own clock, and not those of another, is checked"),
    AUTOCORRELATION(
            "Certified autocorrelations of the Statistical Reference Datasets",
            "intervals rest on independent replications, so that none is calculated"),
    HEAT_INPUT(
            "Heat input and arc energy of welds (EN 1011-1:2009, 8.7; ISO/TR 18491:2015)",
            "of a weld only its travel time is used"),
    POWER("The horsepower (NIST SP 811)", "no power is given or calculated");

    private final String what;
    private final String why;

    LeftOut(String what, String why) {
        this.what = what;
        this.why = why;
    }

    /** What the values are of. */
    public String what() {
        return what;
    }

    /** Why they are not checked, as the rest of a sentence. */
    public String why() {
        return why;
    }
}
