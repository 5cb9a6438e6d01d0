package runthrough.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.study.sizing.SizingStudyTest.request;
import static runthrough.study.sizing.SizingStudyTest.size;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.PlainLine;
import runthrough.study.Evaluator;
import runthrough.study.StudyListener;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverStudy;
import runthrough.study.sizing.Sizing.Answer;

/**
 * Lines on which the entry brings a little less than is used, {@link PlainLine} with other joints: a coil of 600 m gains 240 m, which
 * is 160 s of joint. The level falls from coil change to coil change until the process stands, and with it fills.
 *
 * <p>Rule LEVER-13.
 */
class LongRunTest {
    private static final double TARGET = 0.9;

    @Test
    void stopsThatAreFewEnoughPayForASmallDrift() {
        // Joints of 163 s on average: 4.5 m a coil change are lacking. A stop of 100 s brings 250 m.
        SimulationRequest request = request(drifting(110, 216), 300, 20, 1);

        Sizing sizing = size(request, new SizingOptions(TARGET, 0.5, 20));

        assertThat(sizing.answer()).isEqualTo(Answer.FOUND);
        double capacity = sizing.capacity().orElseThrow().answer().orElseThrow();
        assertThat(shareInTheLongRun(request.line(), capacity)).isGreaterThan(TARGET - 0.01);
    }

    @Test
    void whatOnlyAFullAccumulatorAtTheStartDoes_isNoAnswerOfSizeNorOfTheLever() {
        // Joints of 190 s: 45 m a coil change. 13 km full at the start meet any target for 300 coil changes.
        SimulationRequest request = request(drifting(150, 230), 300, 20, 1);
        double large = 13_500;

        assertThat(size(request, new SizingOptions(TARGET, 0.5, 20)).answer()).isEqualTo(Answer.NONE_IS_ENOUGH);
        assertThat(shareInTheLongRun(request.line(), large)).isLessThan(TARGET - 0.05);
        assertThat(lever(request)).isEmpty();
    }

    @Test
    void sizeAndTheLeverNameTheSameCapacity() {
        SimulationRequest request = request(drifting(110, 216), 300, 20, 1);
        Line small = request.line().with(request.line().accumulator().resizedTo(230));
        SimulationRequest tooSmall = request.with(small);

        Sizing sizing = size(tooSmall, new SizingOptions(TARGET, 0.5, 20));

        assertThat(lever(tooSmall))
                .isPresent()
                .isEqualTo(sizing.capacity().orElseThrow().answer());
    }

    private static Line drifting(double shortest, double longest) {
        return new PlainLine()
                .capacity(700)
                .join(Distribution.uniform(shortest, longest))
                .restart(50, Distribution.constant(100))
                .build();
    }

    private static OptionalDouble lever(SimulationRequest request) {
        return new LeverStudy(request)
                .run(2, StudyListener.NONE).answers().stream()
                        .filter(answer -> answer.lever().what() == Lever.What.CAPACITY)
                        .findFirst()
                        .orElseThrow()
                        .value();
    }

    private static double shareInTheLongRun(Line line, double capacity) {
        return new Evaluator(2, () -> false)
                .evaluate(
                        line.with(line.accumulator().resizedTo(capacity)),
                        new RunPlan(new RunPlan.Extent.Changes(6000), 3000, 10, 2, TARGET))
                .shareRunThrough()
                .mean();
    }
}
