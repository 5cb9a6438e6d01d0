package runthrough.study.benefit;

/** What an alternative gains in a year by good output and scrap together, each counted at a value of its own. */
@FunctionalInterface
public interface YearlySum {

    /**
     * The sum, with an interval from the sums of the replications: two intervals added up would leave out what the gains have in
     * common.
     *
     * @param kilogram value of a kilogram more of good output
     * @param scrap value of a kilogram less scrap
     */
    Gain of(double kilogram, double scrap);
}
