package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.cause.Cause;

/**
 * Process 1.5 m/s, entry 2.5 m/s, speed changes at once. A joint of 60 s draws 90 m; refilling them at 1 m/s takes 90 s, in
 * which 225 m of the next coil pass.
 */
class CoilOutcomesTest {

    private static Coil coil(String name, String product, double width, double length, double speed) {
        CoilSize size = new CoilSize.ByLength(Distribution.constant(length));
        return new Coil(name, new Coil.Strip(0.002, width, 7850), size)
                .withProcessSpeed(speed)
                .withProduct(product);
    }

    private static CoilOutcomes outcomes(Line line, int changes, int replications) {
        SimulationRequest request = HandMade.request(line, changes, replications);
        return new RunThroughStudy(request)
                .run(StudyOptions.plain(), StudyListener.NONE)
                .coils();
    }

    @Test
    void aCoilChangeCountsByTheCoilThatEnds_alsoWhenTheScheduleBeginsAgain() {
        // Rule COIL-8.
        // Strip for 70 s at 1.5 m/s: the joint of 60 s is run through. At 2 m/s it would take 120 of 105 m.
        Line line = new PlainLine()
                .coils(coil("slow", "a", 1, 900, 1.5), coil("fast", "b", 1, 900, 2), coil("slow too", "a", 1, 900, 1.5))
                .capacity(105)
                .processPath(0)
                .join(60)
                .build();

        CoilOutcomes outcomes = outcomes(line, 7, 1);

        // Changes 1 to 7 end coils 1 2 3 1 2 3 1; those that end coil 2 begin at 2 m/s.
        assertThat(outcomes.of(0).changes()).isEqualTo(3);
        assertThat(outcomes.of(1).changes()).isEqualTo(2);
        assertThat(outcomes.of(2).changes()).isEqualTo(2);
        assertThat(outcomes.of(0).failed()).isZero();
        assertThat(outcomes.of(1).stopped()).isEqualTo(2);
        assertThat(outcomes.of(1).causes().main()).contains(Cause.USUAL_JOINT_TOO_LONG);
        assertThat(outcomes.worst()).contains(1);
        assertThat(outcomes.products())
                .extracting(product -> product.name().given())
                .containsExactly("b", "a");
        assertThat(outcomes.products().get(1).coils()).isEqualTo(2);
        assertThat(outcomes.products().get(1).tally().changes()).isEqualTo(5);
        assertThat(outcomes.products().get(1).tally().ranThrough()).isEqualTo(5);
    }

    @Test
    void replicationsAddUpAndCoilsThatNeverCameAreCounted() {
        Line line = new PlainLine()
                .coils(coil("1", "", 1, 900, 1.5), coil("2", "", 1.2, 900, 1.5), coil("3", "", 1, 900, 1.5))
                .join(Distribution.uniform(50, 150))
                .build();

        CoilOutcomes outcomes = outcomes(line, 2, 6);

        assertThat(outcomes.of(0).changes()).isEqualTo(6);
        assertThat(outcomes.of(1).changes()).isEqualTo(6);
        assertThat(outcomes.of(2).changes()).isZero();
        assertThat(outcomes.kinds()).isEqualTo(3);
        assertThat(outcomes.seen()).isEqualTo(2);
        assertThat(outcomes.products())
                .extracting(CoilOutcomes.Product::name)
                .containsExactlyInAnyOrder(new CoilOutcomes.Name("", 0.002, 1), new CoilOutcomes.Name("", 0.002, 1.2));
    }

    @Test
    void aShortCoilThatLeavesNoTimeToFillIsTheWorstForRefill() {
        // 120 m hold 80 s. A coil of 140 m passes in 56 s, which fills from 30 to 86 m; the next joint takes 90.
        Line line = new PlainLine()
                .coils(coil("long", "", 1, 900, 1.5), coil("short", "", 1, 140, 1.5), coil("long", "", 1, 900, 1.5))
                .capacity(120)
                .join(60)
                .build();

        CoilOutcomes outcomes = outcomes(line, 9, 1);

        assertThat(outcomes.worst()).contains(1);
        assertThat(outcomes.of(1).stopped()).isEqualTo(3);
        assertThat(outcomes.of(1).causes().count(Cause.ACCUMULATOR_NOT_FULL)).isEqualTo(3);
        assertThat(outcomes.of(0).failed() + outcomes.of(2).failed()).isZero();
    }

    private static ChangeRecord change(int kind, Outcome outcome, double lost) {
        return new ChangeRecord(
                1, 0, kind, 0, 0, 1, 2, 0, 0, 1, 50, 0, 1, 5, 1, outcome, 0, lost, lost, Double.NaN, Optional.empty());
    }

    @Test
    void oneBadVisitDoesNotMakeACoilTheWorst_andOfEqualsTheDearestIs() {
        Coil coil = coil("x", "", 1, 900, 1.5);
        CoilOutcomes outcomes = new CoilOutcomes(new PlainLine()
                .coilSource(new CoilSource.Schedule(List.of(coil, coil, coil)))
                .build());
        CoilOutcomes.Visits visits = new CoilOutcomes.Visits(3);
        visits.add(0);
        outcomes.addFailed(change(0, Outcome.STOPPED, 100), Cause.USUAL_JOINT_TOO_LONG);
        for (int i = 0; i < 20; i++) {
            for (int kind = 1; kind <= 2; kind++) {
                visits.add(kind);
                if (i < 12) {
                    outcomes.addFailed(change(kind, Outcome.SLOWED, kind), Cause.ACCUMULATOR_NOT_FULL);
                }
            }
        }
        outcomes.add(visits);

        // Wilson, 1 of 1: at least 20.7 %; 12 of 20: at least 38.7 % (Newcombe 1998, method 3, hand calculation).
        assertThat(outcomes.hardest(5)).containsExactly(2, 1, 0);
        assertThat(outcomes.hardest(2)).containsExactly(2, 1);
        assertThat(outcomes.of(1).interval().low()).isCloseTo(1 - 0.7812, within(5e-4));
        assertThat(outcomes.of(2).lostMetres()).isEqualTo(24);
    }

    @Test
    void whereAllRanThroughNoneIsTheWorst() {
        Line line = new PlainLine()
                .coils(coil("a", "", 1, 900, 1.5), coil("b", "", 1, 900, 1.5))
                .join(60)
                .build();

        assertThat(outcomes(line, 4, 1).worst()).isEmpty();
    }
}
