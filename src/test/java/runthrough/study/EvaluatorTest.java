package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.check.LineCheck;
import runthrough.simulation.PlainLine;
import runthrough.study.statistics.Estimate;

/** Variants of lines under common random numbers, see {@link HandMade} for the line of round numbers. */
class EvaluatorTest {

    /** 50 m bear 47 s: 54 % of joints uniform from 20 to 70 s run through. */
    private static final Line RANDOM = HandMade.line(Distribution.uniform(20, 70));

    private static final RunPlan PLAN = HandMade.request(RANDOM, 50, 20).run();

    private static Evaluator evaluator(int threads) {
        return new Evaluator(threads, () -> false);
    }

    @Test
    void itGivesWhatTheVerdictGives() {
        Evaluation evaluation = evaluator(2).findingCauses().evaluate(RANDOM, PLAN);
        Verdict verdict = new RunThroughStudy(HandMade.request(RANDOM, 50, 20))
                .run(StudyOptions.plain(), StudyListener.NONE)
                .verdict();

        assertThat(evaluation.shareRunThrough()).isEqualTo(verdict.shareRunThrough());
        assertThat(evaluation.changes()).isEqualTo(verdict.changes().total());
        assertThat(evaluation.ranThrough()).isEqualTo(verdict.changes().ranThrough());
        assertThat(evaluation.causes()).isEqualTo(verdict.causes());
        assertThat(evaluation.output()).isEqualTo(verdict.output());
        assertThat(evaluation.stoppages()).isEqualTo(verdict.stoppages());
        assertThat(evaluation.answer(0.9)).isEqualTo(verdict.answer());
        assertThat(evaluation.resolution(0.9)).isEqualTo(verdict.resolution());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        assertThat(evaluator(threads).evaluate(RANDOM, PLAN))
                .isEqualTo(evaluator(1).evaluate(RANDOM, PLAN));
    }

    @Test
    void variantsMeetTheSameRandomNumbers_soThatTheirDifferenceIsKnownBetterThanEither() {
        // Independent random numbers would differ by 1.4 times the spread of one.
        Evaluation here = evaluator(2).evaluate(RANDOM.with(Accumulator.ofCapacity(51)), PLAN);
        Evaluation there = evaluator(2).evaluate(RANDOM, PLAN);

        // Each stop is shorter by 1 s in some 1000 s, and so much more comes out.
        Estimate difference = here.speedOver(there);
        assertThat(difference.interval().orElseThrow().low()).isPositive();
        assertThat(difference.sd().orElseThrow())
                .isLessThan(0.5 * there.output().speed().sd().orElseThrow());
        assertThat(here.output().speed().mean() - there.output().speed().mean())
                .isCloseTo(difference.mean(), within(1e-12));
    }

    @Test
    void onlyAsManyReplicationsCanBePaired() {
        Evaluation twenty = evaluator(1).evaluate(RANDOM, PLAN);

        assertThat(twenty.first(5).replications())
                .isEqualTo(twenty.replications().subList(0, 5));
        assertThat(twenty.first(30)).isSameAs(twenty);
        assertThatThrownBy(() -> twenty.first(5).speedOver(twenty))
                .hasMessage("5 replications cannot be paired with 20");
    }

    @Test
    void knownReplicationsAreNotRunAgain() {
        Evaluation twenty = evaluator(1).evaluate(RANDOM, PLAN);
        // Known to be what they are not, so that a second run would show.
        Evaluation other = evaluator(1).evaluate(RANDOM.with(Accumulator.ofCapacity(80)), PLAN);
        Evaluation mixed =
                evaluator(2).evaluate(RANDOM, PLAN, i -> i % 3 == 0 ? other.replication(i) : Optional.empty());

        for (int i = 0; i < 20; i++) {
            assertThat(mixed.replication(i)).isEqualTo((i % 3 == 0 ? other : twenty).replication(i));
        }
        assertThat(mixed.replication(20)).isEmpty();
    }

    @Test
    void aLineWithNothingRandomIsRunOnce() {
        Evaluation evaluation = evaluator(2).evaluate(HandMade.line(Distribution.constant(40)), PLAN);

        assertThat(evaluation.replications()).hasSize(1);
        assertThat(evaluation.chance()).isFalse();
        assertThat(evaluation.answer(1)).isEqualTo(TargetStatus.MEETS);
    }

    @Test
    void coilChangesLeftOutAreLeftOut() {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(50), 20, 4, 1, 0.9);

        assertThat(evaluator(2).evaluate(RANDOM, plan).changes()).isEqualTo(4 * 30);
    }

    @Test
    void aRefusedLineOrOneThatCannotGoOnGivesNothing() {
        // The stop level is 1 m.
        Line refused = RANDOM.with(Accumulator.ofCapacity(0.5));
        // Every joint is made twice, and the crops of 6 m of the second leave nothing of 10 m of coil.
        Line stuck = new PlainLine()
                .coils(PlainLine.cropped(10, 3, 3))
                .reject(new runthrough.plant.CoilChange.Reject.Every(1))
                .join(60)
                .build();

        assertThat(evaluator(1).attempt(refused, PLAN)).isEmpty();
        assertThat(LineCheck.accepts(stuck)).isTrue();
        assertThat(evaluator(1).attempt(stuck, PLAN)).isEmpty();
        assertThat(evaluator(1).attempt(RANDOM, PLAN)).isPresent();
        assertThatThrownBy(() -> evaluator(1).evaluate(stuck, PLAN))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("replication 1: coil 2");
    }

    @Test
    void aRunTooShortForACoilChangeIsRefused() {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Time(100), 0, 3, 1, 0.9);

        assertThatThrownBy(() -> evaluator(1).evaluate(RANDOM, plan))
                .isInstanceOf(StudyException.class)
                .hasMessage("no coil change was completed in any of 3 replications;"
                        + " give a longer run, or fewer coil changes to leave out");
    }

    @Test
    void itCanBeGivenUp() {
        assertThatThrownBy(() -> new Evaluator(1, () -> true).evaluate(RANDOM, PLAN))
                .isInstanceOf(CancellationException.class);
    }
}
