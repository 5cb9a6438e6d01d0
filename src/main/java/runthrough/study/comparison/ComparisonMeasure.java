package runthrough.study.comparison;

import java.util.OptionalDouble;
import runthrough.simulation.records.Totals;
import runthrough.study.Evaluation;
import runthrough.study.TotalsEstimates;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.SplitValues;

/** What alternatives are compared by. Values are SI, of one replication each; a shift is 8 h. */
public enum ComparisonMeasure {
    /** Share of coil changes run through, in [0, 1]. */
    RUN_THROUGH(Better.MORE, Per.NOTHING),
    /** Starved stops per shift. */
    STOPS(Better.LESS, Per.SHIFT),
    /** Lost time (starved), at the rated speed, per shift (s). */
    LOST_TIME(Better.LESS, Per.SHIFT),
    /** Strip processed over time (m/s). */
    OUTPUT_LENGTH(Better.MORE, Per.SECOND),
    /** The same by mass (kg/s). */
    OUTPUT_MASS(Better.MORE, Per.SECOND),
    /** Metres processed over metres at the rated speed, in [0, 1]. */
    UTILISATION(Better.MORE, Per.NOTHING),
    /** Good output over what was processed, by mass, in [0, 1]. */
    YIELD(Better.MORE, Per.NOTHING),
    /** Crops and strip scrapped at stops per shift (kg). */
    SCRAP_MASS(Better.LESS, Per.SHIFT),
    /** Scrap over scrap and processed strip, by mass, in [0, 1]. */
    SCRAP_SHARE(Better.LESS, Per.NOTHING),
    /** How long the strip stands at the joiner, or at the place where it is threaded, at a coil change (s). */
    JOINT_CYCLE_TIME(Better.LESS, Per.NOTHING),
    /**
     * Work of people at the joint at a coil change (person-seconds): the time that tail and join work take, rethreading
     * included, and what is done again when a joint is not good, times the crew of the shift in which the coil change begins. All of it count as present, and waiting
     * for the next coil does not count: those who prepare it are not at the joint.
     */
    CREW_TIME_PER_CHANGE(Better.LESS, Per.NOTHING),
    /** The same per shift (person-seconds). */
    CREW_TIME(Better.LESS, Per.SHIFT),
    /** What people are paid for, people times the hours of their shift whether they are at the joint or not, per shift (person-seconds). */
    PAID_TIME(Better.LESS, Per.SHIFT);

    private final Better better;
    private final Per per;

    ComparisonMeasure(Better better, Per per) {
        this.better = better;
        this.per = per;
    }

    /** Which of two values is better. */
    private enum Better {
        MORE,
        LESS
    }

    /** What a value is per. */
    private enum Per {
        NOTHING,
        SECOND,
        SHIFT
    }

    /** Whether {@code difference} is for the better. */
    public boolean isGain(double difference) {
        return better == Better.MORE ? difference > 0 : difference < 0;
    }

    /**
     * What a value is to be multiplied by to be of a year (stops, s, m, kg, s, person-s); empty where a year has no meaning.
     *
     * @param yearlyTime scheduled running time of a year (s)
     */
    public OptionalDouble perYear(double yearlyTime) {
        return switch (per) {
            case NOTHING -> OptionalDouble.empty();
            case SECOND -> OptionalDouble.of(yearlyTime);
            case SHIFT -> OptionalDouble.of(yearlyTime / TotalsEstimates.SHIFT);
        };
    }

    /** The value of a replication; NaN where it has none. */
    double of(Totals totals) {
        return switch (this) {
            case RUN_THROUGH -> totals.shareRunThrough();
            case STOPS -> perShift(totals, totals.starvedStops());
            case LOST_TIME -> perShift(totals, totals.lostTime());
            case OUTPUT_LENGTH -> totals.goodSpeed();
            case OUTPUT_MASS -> totals.goodMassFlow();
            case UTILISATION -> totals.utilisation();
            case YIELD -> totals.goodShare();
            case SCRAP_MASS -> perShift(totals, totals.scrapKilograms());
            case SCRAP_SHARE -> totals.scrapShare();
            case JOINT_CYCLE_TIME -> totals.jointSeconds() / totals.changes();
            case CREW_TIME_PER_CHANGE -> totals.crewSeconds() / totals.changes();
            case CREW_TIME -> perShift(totals, totals.crewSeconds());
            case PAID_TIME -> perShift(totals, totals.paidSeconds());
        };
    }

    /** How well the value is known from {@code evaluation}. */
    Estimate estimate(Evaluation evaluation) {
        return switch (this) {
            case RUN_THROUGH -> evaluation.shareRunThrough();
            case STOPS -> evaluation.stoppages().starvedPerShift();
            case LOST_TIME -> evaluation.stoppages().lostTimePerShift();
            case OUTPUT_LENGTH -> evaluation.output().speed();
            case OUTPUT_MASS -> evaluation.output().massFlow();
            case UTILISATION -> evaluation.output().utilisation();
            case YIELD -> evaluation.output().goodShare();
            case SCRAP_MASS -> evaluation.output().scrapKilogramsPerShift();
            case SCRAP_SHARE -> evaluation.output().scrapShare();
            case PAID_TIME -> evaluation.output().paidTimePerShift();
            default -> evaluation.amount(this::of);
        };
    }

    /** One value of each replication, with what stops make of it. */
    SplitValues values(Evaluation evaluation) {
        return switch (this) {
            case STOPS -> evaluation.estimates().starvedStops();
            case LOST_TIME -> evaluation.estimates().lostTime();
            case OUTPUT_LENGTH -> evaluation.estimates().speed();
            case OUTPUT_MASS -> evaluation.estimates().massFlow();
            case UTILISATION -> evaluation.estimates().utilisation();
            case YIELD -> evaluation.estimates().goodShare();
            case SCRAP_MASS -> evaluation.estimates().scrapMass();
            case SCRAP_SHARE -> evaluation.estimates().scrapShare();
            default -> SplitValues.whole(evaluation.each(this::of));
        };
    }

    private static double perShift(Totals totals, double value) {
        return value / totals.duration() * TotalsEstimates.SHIFT;
    }
}
