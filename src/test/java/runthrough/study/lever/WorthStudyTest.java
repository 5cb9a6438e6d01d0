package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;
import runthrough.study.cause.Cause;

/**
 * What it is worth to remove a cause that is the only one: then every coil change runs through. 150 m last for 100 s at 1.5 m/s;
 * coils of 5,000 m, so that the accumulator is always full again.
 *
 * <p>Rules WORTH-1, WORTH-2, WORTH-3, WORTH-4.
 */
class WorthStudyTest {

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(5000)).capacity(150);
    }

    private static StudyResult result(Line line) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(60), 0, 10, 5, 0.99);
        SimulationRequest request = new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC);
        return new RunThroughStudy(request).run(StudyOptions.plain(), StudyListener.NONE);
    }

    private static List<CauseWorth> worths(StudyResult result) {
        return new WorthStudy(result).run(2, StudyListener.NONE);
    }

    /** Without its only cause every coil change runs through: what is saved is all that there was. */
    private static void savesAll(Line line, Cause cause) {
        StudyResult result = result(line);
        double year = result.request().run().yearlyTime();
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            assertThat(worth.reason().cause()).isEqualTo(cause);
            assertThat(worth.replications()).isEqualTo(10);
            assertThat(worth.shareRunThrough().mean())
                    .isCloseTo(1 - result.verdict().shareRunThrough().mean(), within(1e-12));
            double stops = result.totals().stream()
                    .mapToDouble(one -> one.starvedStops() / one.duration() * year)
                    .average()
                    .orElseThrow();
            assertThat(worth.stops().mean()).isPositive().isCloseTo(stops, within(1e-9 * stops));
            assertThat(worth.lostTime().mean()).isPositive();
            assertThat(worth.goodOutput().mean()).isPositive();
            assertThat(worth.stops().interval().isPresent()).isEqualTo(!line.isDeterministic());
        });
    }

    @Test
    void anOccasionalElementTakesNoTime() {
        // 50 s, and 80 s more at every third coil change: 130 s of 100 s.
        WorkElement electrode = new WorkElement(
                "electrode", new WorkTime.Timed(Distribution.constant(80)), new Occurrence.Every(3), false);
        savesAll(line().join(50).join(electrode).build(), Cause.OCCASIONAL_ELEMENT);
    }

    @Test
    void jointsAreNeverRejected() {
        savesAll(line().join(70).reject(new Reject.Chance(0.1)).build(), Cause.JOINT_MADE_AGAIN);
    }

    @Test
    void anElementNeverTakesLongerThanItsMedian() {
        // The median is 80 s; half of the joints take up to 120 s.
        savesAll(line().join(Distribution.uniform(40, 120)).build(), Cause.ELEMENT_TOOK_LONG);
    }

    @Test
    void theNextCoilIsAlwaysPrepared() {
        // One uncoiler: each joint waits 300 s.
        savesAll(
                line().uncoilers(1, 0)
                        .prepare(300)
                        .join(Distribution.uniform(50, 70))
                        .build(),
                Cause.WAITING_FOR_PREPARATION);
    }

    @Test
    void aUsualJointTooLongIsNothingToRemove_norIsWhereNothingFails() {
        assertThat(worths(result(line().join(120).build()))).isEmpty();
        assertThat(worths(result(line().join(60).build()))).isEmpty();
    }

    @Test
    void threadsChangeNothing() {
        StudyResult result =
                result(line().join(70).reject(new Reject.Chance(0.1)).build());
        assertThat(new WorthStudy(result).run(1, StudyListener.NONE))
                .isEqualTo(new WorthStudy(result).run(3, StudyListener.NONE));
    }
}
