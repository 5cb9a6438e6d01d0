package runthrough.report.validation;

import java.util.List;

/** What checks are about; the parts of the page, in order. */
public enum Topic {
    TWO_MACHINES(
            "Two unreliable machines and a buffer",
            "The whole simulator, under chance, against an exact solution: an entry that fails once a coil and a process that "
                    + "stops of its own, with an accumulator between them, all times exponential and speeds that jump. Coil "
                    + "lengths are exponential, so that coils run out per metre.",
            "MOTION-1",
            "ENTRY-3",
            "ENTRY-4",
            "ENTRY-19",
            "PROC-3",
            "PROC-4",
            "DOWN-1",
            "DOWN-4",
            "REPORT-10",
            "REPORT-11"),
    FLUID_QUEUE(
            "On/off fluid queue",
            "The whole simulator against the classical fluid queue: a process that never stops of its own, exponential "
                    + "joints. Shares are of time.",
            "MOTION-1",
            "ENTRY-3",
            "ENTRY-4",
            "PROC-3",
            "REPORT-8"),
    JOINT_DEFICIT(
            "Strip missing at each joint",
            "The whole simulator, joint by joint, against queueing theory: strip drawn by a joint and given back by a coil "
                    + "follow the recursion of a waiting time. Shares are of joints.",
            "MOTION-1",
            "ENTRY-21",
            "PROC-3",
            "PROC-4",
            "REPORT-2",
            "REPORT-6"),
    KINEMATICS(
            "Ramps, strip drawn and refill",
            "Uniform acceleration, hand calculation: what a coil change draws from the accumulator and how long it takes to "
                    + "refill.",
            "ENTRY-3",
            "ENTRY-4",
            "ENTRY-14",
            "REPORT-2",
            "REPORT-5",
            "FORM-1",
            "FORM-3",
            "FORM-5",
            "FORM-6"),
    TWO_WAYS(
            "Two ways to the same number",
            "Random lines, none alike, computed in two separate ways: by closed forms and by simulation, and by this engine "
                    + "and by a second one, written in another language and style.",
            "FORM-1",
            "FORM-2",
            "FORM-5",
            "FORM-8",
            "FORM-10",
            "FORM-11"),
    GEOMETRY(
            "Coils, gauges, loops and bending",
            "Length and mass from diameters, gauge numbers, strip in a hanging loop.",
            "COIL-1",
            "ACC-3",
            "ACC-10"),
    UNITS("Units", "Factors between units. Exact ones must agree to the last bit."),
    RANDOM_NUMBERS(
            "Random numbers",
            "The generator's own published output, and the distributions drawn from it.",
            "RANDOM-2",
            "DIST-2",
            "DIST-3",
            "DIST-4",
            "DIST-5",
            "DIST-6",
            "DIST-7",
            "DIST-8",
            "DIST-12"),
    STATISTICS(
            "Statistics",
            "Means, spreads, quantiles and intervals against certified and published values.",
            "REPORT-12",
            "REPORT-13",
            "REPORT-15"),
    COVERAGE(
            "How often intervals hold the truth",
            "Share of 300 studies, each with a seed of its own, whose interval of a printed figure holds the exact value: of 95 % "
                    + "intervals 95 % or more, within binomial error. Few coil changes and rare stops, where intervals are hardest.",
            "REPORT-12",
            "REPORT-13",
            "REPORT-17"),
    FITS(
            "Distributions fitted to measured times",
            "Parameters, likelihoods and test statistics against published fits and tables of critical values."),
    WORK("Work", "Times of the work of a coil change, and how they are studied.", "CHANGE-1", "CHANGE-3"),
    ECONOMICS(
            "Payback and present value",
            "What a change to the line returns, against published factors and worked cases.");

    private final String title;
    private final String about;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which cannot be changed
    private final List<String> rules;

    Topic(String title, String about, String... rules) {
        this.title = title;
        this.about = about;
        this.rules = List.of(rules);
    }

    /** Heading of the part. */
    public String title() {
        return title;
    }

    /** What is checked there, in a sentence or some. */
    public String about() {
        return about;
    }

    /** The rules of the specification, {@code src/docs/model.md}, that the checks concern; none where they concern no rule. */
    public List<String> rules() {
        return rules;
    }
}
