package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace.Point;

/**
 * A line on which everything goes wrong at random: slowing, starved stops, joint passages, joint breaks, rejects, scrap. Strip and
 * mass are conserved, and every metre that the process does not run is lost once.
 */
class ConservationTest {
    /** Of the coils (kg/m): 2 mm by 1 m of steel. */
    private static final double MASS = 15.7;

    private static PlainLine line() {
        return new PlainLine()
                .coils(PlainLine.cropped(300, 1, 2))
                .entry(2.5, 0.3, 0.4)
                .capacity(80)
                .allowance(1)
                .process(1.5, 0.2, 0.25)
                .slowing(0.8, 30, 45)
                .restart(25, Distribution.exponential(5))
                .processPath(20)
                .scrapPerStop(2)
                .scrapPerJoint(1.5)
                .jointPassage(0.5, 20, 30)
                .jointBreak(0.2, 60, Distribution.gamma(60, 30), 12)
                .reject(new Reject.Chance(0.1))
                .join(Distribution.lognormal(35, 25));
    }

    private static Replication run(PlainLine line, long seed) {
        return LineSimulator.unchecked(line.build(), new RunPlan(new Extent.Changes(200), 0, 1, seed, 0.995))
                .run(0, Detail.TRACE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void stripAndMassAreConserved(long seed) {
        // Rules NUM-3, REPORT-8, REPORT-9.
        Replication run = run(line(), seed);
        Totals totals = run.totals();
        Point last = last(run);

        assertThat(80 + totals.enteredMetres() - totals.processedMetres() - last.level())
                .isCloseTo(0, within(1e-6));
        assertThat(totals.processedKilograms()).isCloseTo(MASS * totals.processedMetres(), within(1e-4));
        assertThat(totals.scrapKilograms()).isCloseTo(MASS * totals.scrapMetres(), within(1e-4));
        assertThat(totals.goodKilograms()).isCloseTo(MASS * totals.goodMetres(), within(1e-4));
        assertThat(totals.goodMetres() + totals.processedScrap().metres())
                .isCloseTo(totals.processedMetres(), within(1e-6));
        int passes = run.changes().stream().mapToInt(ChangeRecord::passes).sum();
        assertThat(totals.cropMetres()).isCloseTo(3 * passes, within(1e-6));
        assertThat(totals.processedScrap().jointMetres()).isCloseTo(1.5 * 200, within(1e-6));
        assertThat(totals.processedScrap().breakMetres()).isCloseTo(12 * totals.jointBreaks(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyMetreBelowTheRatedSpeedIsLostOnce(long seed) {
        // Rules PASS-5, REPORT-6, REPORT-7.
        // Without downtime, and with one rated speed, nothing but strip, breaks and passages keeps the process below
        // it.
        Replication run = run(line(), seed);
        Totals totals = run.totals();

        assertThat(totals.starvedStops()).isPositive();
        assertThat(totals.slowings()).isPositive();
        assertThat(totals.jointBreaks()).isPositive();
        assertThat(totals.lostMetres() + totals.breakLostMetres() + totals.passageLostMetres())
                .isCloseTo(totals.ratedMetres() - totals.processedMetres(), within(1e-6));
        assertThat(run.changes().stream().mapToDouble(ChangeRecord::lostMetres).sum())
                .isCloseTo(totals.lostMetres(), within(1e-6));
        assertThat(run.changes())
                .filteredOn(change -> change.outcome() == Outcome.RAN_THROUGH)
                .allMatch(change -> change.lostMetres() == 0);
    }

    private static Point last(Replication run) {
        var points = run.trace().orElseThrow().points();
        return points.get(points.size() - 1);
    }
}
