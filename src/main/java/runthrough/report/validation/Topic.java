package runthrough.report.validation;

/** What checks are about; the parts of the page, in order. */
public enum Topic {
    TWO_MACHINES(
            "Two unreliable machines and a buffer",
            "The whole simulator, under chance, against an exact solution: an entry that fails once a coil and a process that "
                    + "stops of its own, with an accumulator between them, all times exponential and speeds that jump. Coil "
                    + "lengths are exponential, so that coils run out per metre."),
    FLUID_QUEUE(
            "On/off fluid queue",
            "The whole simulator against the classical fluid queue: a process that never stops of its own, exponential "
                    + "joints. Shares are of time."),
    JOINT_DEFICIT(
            "Strip missing at each joint",
            "The whole simulator, joint by joint, against queueing theory: strip drawn by a joint and given back by a coil "
                    + "follow the recursion of a waiting time. Shares are of joints."),
    KINEMATICS(
            "Ramps, strip drawn and refill",
            "Uniform acceleration, worked by hand: what a coil change draws from the accumulator and how long it takes to "
                    + "refill."),
    TWO_WAYS(
            "Two ways to the same number",
            "Random lines, none alike, computed in two separate ways: by closed forms and by simulation, and by this engine "
                    + "and by a second one, written in another language and style."),
    GEOMETRY(
            "Coils, gauges, loops and bending",
            "Length and mass from diameters, gauge numbers, strip in a hanging loop."),
    UNITS("Units", "Factors between units. Exact ones must agree to the last bit."),
    RANDOM_NUMBERS("Random numbers", "The generator's own published output, and the distributions drawn from it."),
    STATISTICS("Statistics", "Means, spreads, quantiles and intervals against certified and published values."),
    FITS(
            "Laws fitted to measured times",
            "Parameters, likelihoods and test statistics against published fits and tables of critical values."),
    WORK("Work", "Times of the work of a coil change, and how they are studied."),
    ECONOMICS(
            "Payback and present value",
            "What a change to the line returns, against published factors and worked cases.");

    private final String title;
    private final String about;

    Topic(String title, String about) {
        this.title = title;
        this.about = about;
    }

    /** Heading of the part. */
    public String title() {
        return title;
    }

    /** What is checked there, in a sentence or some. */
    public String about() {
        return about;
    }
}
