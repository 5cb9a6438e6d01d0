package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;

/**
 * What is varied of a line, and how far. Entry 2.5 m/s, process 1.5 m/s, 200 m of accumulator, coils of 600 m, a joint of 60 s,
 * speeds change at once.
 */
class LineLeversTest {

    private static PlainLine line() {
        return new PlainLine().join(60);
    }

    private static LineLevers of(PlainLine line) {
        return new LineLevers(line.build(), UnitSystem.METRIC);
    }

    @Test
    void everyNamedElementIsALever_ofPreparationTailAndJoin() {
        // Rule LEVER-1.
        Line three = line().prepare(30).tail(10).build();
        assertThat(LeverList.of(three, UnitSystem.METRIC).stream().map(Supplier::get))
                .extracting(varied -> varied.lever().what())
                .containsExactly(
                        Lever.What.CAPACITY,
                        Lever.What.JOINT_CYCLE_TIME,
                        Lever.What.PROCESS_SPEED,
                        Lever.What.REJECTS,
                        Lever.What.CREW,
                        Lever.What.UNCOILERS,
                        Lever.What.ENTRY_TOP_SPEED,
                        Lever.What.ELEMENT,
                        Lever.What.ELEMENT,
                        Lever.What.ELEMENT);
    }

    @Test
    void capacityIsTriedUpToTwentyTimesWhatThereIsOrIsNeeded() {
        // Rule LEVER-3. 60 s at 1.5 m/s draw 90 m; 200 s draw 300 m.
        assertThat(of(line()).capacity().scale().to()).isCloseTo(20 * 200, within(1e-9));
        assertThat(of(new PlainLine().join(200)).capacity().scale().to()).isCloseTo(20 * 300, within(1e-9));
    }

    @Test
    void theProcessIsTriedFromATwentiethUpToTheEntrysTopSpeed_fasterThanCreepAndSlowSpeed() {
        // Rule LEVER-5.
        assertThat(of(line()).processSpeed().scale().from()).isCloseTo(1.5 / 20, within(1e-12));
        assertThat(of(line()).processSpeed().scale().to()).isEqualTo(2.5);
        assertThat(of(line().creep(0.5, 10)).processSpeed().scale().from())
                .isGreaterThan(0.5)
                .isCloseTo(0.5, within(1e-3));
        assertThat(of(line().slowing(1, 100, 150)).processSpeed().scale().from())
                .isGreaterThan(1)
                .isCloseTo(1, within(2e-3));
    }

    @Test
    void whereEveryNthJointIsRejected_nIsTheLeastThatIsRareEnough() {
        // Rule LEVER-6. A third and a quarter are no more than 0.35 and 0.3; down to none.
        Varied rejects = of(line().reject(new Reject.Every(2))).rejects();
        assertThat(rejects.variant().apply(0.35).change().reject()).isEqualTo(new Reject.Every(3));
        assertThat(rejects.variant().apply(0.3).change().reject()).isEqualTo(new Reject.Every(4));
        assertThat(rejects.variant().apply(0.25).change().reject()).isEqualTo(new Reject.Every(4));
        assertThat(rejects.easiest()).isZero();
        assertThat(rejects.variant().apply(0).change().reject()).isEqualTo(new Reject.Never());
    }

    @Test
    void theEntryAndCoilsAreTriedUpToTwentyTimes_theFillRateLimitStays() {
        // Rule LEVER-8.
        Varied entry = of(line().fillRate(0.8)).entryTopSpeed();
        assertThat(entry.scale().to()).isCloseTo(20 * 2.5, within(1e-12));
        assertThat(entry.variant().apply(50).accumulator().fillRateLimit()).isEqualTo(0.8);
        Varied coils = of(line()).coilLength();
        assertThat(coils.scale().to()).isCloseTo(20 * 600, within(1e-9));
        assertThat(coils.variant().apply(1200).coils().get(0).meanLength()).isCloseTo(1200, within(1e-9));
    }
}
