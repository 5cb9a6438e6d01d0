package runthrough.study.logged;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.linelog.LineEvent;
import runthrough.linelog.LineLog;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;
import runthrough.study.StudyListener;
import runthrough.study.logged.LogComparison.Fit;

/**
 * Process 1.5 m/s, speed changes at once, 105 m hold 70 s. Joints of 45 to 75 s, evenly spread: 25/30 run through in the hand calculation, the
 * other sixth takes longer than the accumulator lasts.
 */
class LogStudyTest {
    private static final int CHANGES = 60;

    private static PlainLine line(double capacity, double joint) {
        return new PlainLine()
                .coils(PlainLine.coil(900))
                .capacity(capacity)
                .join(Distribution.uniform(joint - 15, joint + 15));
    }

    private static final Line LINE = line(105, 60).build();

    private static SimulationRequest request(Line line) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(10), 0, 10, 3, 0.9);
        return new SimulationRequest("Line of round numbers (invented)", List.of(), line, plan, UnitSystem.METRIC);
    }

    private static Replication run(Line line, int changes, long seed) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(changes + 1), 0, 1, seed, 0.9);
        return LineSimulator.of(line, plan).run(0, Detail.TRACE);
    }

    private static LineLog log(Line line, int changes, long seed) {
        return SimulatedLog.of(run(line, changes, seed), false);
    }

    private static LogComparison compare(Line model, LineLog log) {
        return new LogStudy(request(model), log, false, 100).run(1, StudyListener.NONE);
    }

    @Test
    void aSimulatedLogSaysWhatTheSimulationKnows() {
        Replication run = run(LINE, CHANGES, 5);

        LineLog log = SimulatedLog.of(run, false);

        assertThat(log.changes()).hasSize(CHANGES);
        assertThat(log.joints()).hasSize(CHANGES + 1);
        for (int i = 0; i < CHANGES; i++) {
            assertThat(log.changes().get(i).ranThrough())
                    .as("coil change " + (i + 1))
                    .isEqualTo(run.changes().get(i).starvedStops() == 0);
            assertThat(log.changes().get(i).joint().time())
                    .isEqualTo(run.changes().get(i).jointCycleTime());
        }
        double stood = log.stops().stream().mapToDouble(LineLog.Stop::duration).sum();
        assertThat(stood).isCloseTo(run.totals().starvedSeconds(), org.assertj.core.api.Assertions.within(1e-6));
    }

    /** 40 lines that are the model: 38 should fit, with three standard errors of sqrt(40 x 0.05 x 0.95) = 1.4 at least 34. */
    @Test
    void aModelThatIsRightFitsInNineteenOfTwentyCases() {
        long fits = IntStream.range(0, 40)
                .filter(i -> compare(LINE, log(LINE, CHANGES, 1000 + i)).fit() == Fit.FITS)
                .count();

        assertThat(fits).isGreaterThanOrEqualTo(34);
    }

    @Test
    void aLineWithLessStripThanTheModelStopsMoreOften_andOneWithMoreLess() {
        // 91.5 m hold 61 s: half run through, not five sixths. 120 m hold 80 s: all do.
        assertThat(compare(LINE, log(line(91.5, 60).build(), CHANGES, 1)).fit()).isEqualTo(Fit.LINE_STOPS_MORE);
        assertThat(compare(LINE, log(line(120, 60).build(), CHANGES, 1)).fit()).isEqualTo(Fit.LINE_STOPS_LESS);
        assertThat(compare(LINE, log(line(91.5, 60).build(), CHANGES, 1)).differing())
                .extracting(FigureComparison::figure)
                .doesNotContain(LogFigure.JOINT_CYCLE_TIME, LogFigure.LONG_JOINT_CYCLE_TIME, LogFigure.CYCLE);
    }

    @Test
    void slowJointsAreSeen_andWithTheJointCycleTimesOfTheLogTheRestFits() {
        LineLog slow = log(line(105, 66).build(), CHANGES, 4);

        LogComparison asDescribed = compare(LINE, slow);
        LogComparison withTheirJoints = new LogStudy(request(LINE), slow, true, 100).run(1, StudyListener.NONE);

        assertThat(asDescribed.fit()).isEqualTo(Fit.LINE_STOPS_MORE);
        assertThat(asDescribed.differing()).extracting(FigureComparison::figure).contains(LogFigure.JOINT_CYCLE_TIME);
        assertThat(withTheirJoints.fit()).isEqualTo(Fit.FITS);
        assertThat(withTheirJoints.of(LogFigure.JOINT_CYCLE_TIME).isWithin()).isTrue();
    }

    @Test
    void withTheJointCycleTimesOfTheLogAnAccumulatorThatDiffersIsStillSeen() {
        LineLog log = log(line(91.5, 60).build(), CHANGES, 4);

        assertThat(new LogStudy(request(LINE), log, true, 100)
                        .run(1, StudyListener.NONE)
                        .fit())
                .isEqualTo(Fit.LINE_STOPS_MORE);
    }

    @Test
    void stopsOfTheProcesssOwnCountUnlessTheLogDistinguishesThem() {
        Line line = line(200, 60)
                .downtime(Distribution.exponential(900), Distribution.constant(60))
                .build();
        Replication run = run(line, CHANGES, 9);
        List<LineEvent> all = SimulatedLog.events(run, false);
        List<LineEvent> forStrip = SimulatedLog.events(run, true);
        assertThat(all).hasSizeGreaterThan(forStrip.size());

        LogComparison mixed = compare(line, LineLog.of("a", all, false));
        LogComparison apart = compare(line, LineLog.of("b", forStrip, true));

        assertThat(mixed.fit()).isEqualTo(Fit.FITS);
        assertThat(mixed.of(LogFigure.SHARE_RUN_THROUGH).mean()).isLessThan(0.9);
        assertThat(apart.fit()).isEqualTo(Fit.FITS);
        assertThat(apart.of(LogFigure.SHARE_RUN_THROUGH).mean()).isEqualTo(1);
    }

    @Test
    void withNothingRandomTheLoggedShareIsHeldAgainstTheExactOne() {
        Line sure = new PlainLine()
                .coils(PlainLine.coil(900))
                .capacity(105)
                .join(60)
                .build();

        LogComparison same = compare(sure, log(sure, 20, 1));
        LogComparison other = compare(sure, log(line(60, 60).build(), 20, 1));

        assertThat(same.simulatedLogs()).isEqualTo(1);
        assertThat(same.fit()).isEqualTo(Fit.FITS);
        assertThat(other.fit()).isEqualTo(Fit.LINE_STOPS_MORE);
    }

    @Test
    void theSameWhateverTheNumberOfThreads() {
        LineLog log = log(LINE, 30, 8);
        Consumer<Integer> run = threads -> assertThat(new LogStudy(request(LINE), log, false, 100)
                        .run(threads, StudyListener.NONE)
                        .jointCycleTimes())
                .isEqualTo(compare(LINE, log).jointCycleTimes());

        run.accept(2);
        run.accept(5);
    }
}
