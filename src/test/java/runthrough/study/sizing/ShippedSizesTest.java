package runthrough.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.TargetStatus;
import runthrough.study.search.Crossing;

/** The promise of a size, on every shipped line that has an accumulator: set, it gives what was said of it. */
class ShippedSizesTest {
    private static final int REPLICATIONS = 12;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tube-line",
                "tube-line-measured",
                "stamping-joiner",
                "tube-spiral",
                "roll-former",
                "coating-line",
                "slitter",
                "galvanising-line",
                "slitter-widths"
            })
    void theSmallestAccumulatorMeetsTheTarget_andEachPointOfTheCurveIsWhatARunShows(String name) {
        SimulationRequest asked = ((ScenarioReading.Accepted)
                        ScenarioFile.open(Path.of("scenarios", name + ".yaml")).read())
                .request();
        SimulationRequest request = asked.with(asked.run().withReplications(REPLICATIONS));
        double target = request.run().target();
        Sizing sizing = SizingStudyTest.size(request, new SizingOptions(target, 0.9, REPLICATIONS));
        Crossing found = sizing.capacity().orElseThrow();

        Evaluation with = run(request, found.answer().orElseThrow());
        if (found.canBeShown()) {
            assertThat(with.answer(target)).isEqualTo(TargetStatus.MEETS);
        }
        assertThat(with.shareRunThrough().mean()).isGreaterThanOrEqualTo(target);
        assertThat(sizing.curve())
                .filteredOn(point -> point.share().isPresent())
                .allSatisfy(point -> assertThat(point.share())
                        .hasValue(run(request, point.size().capacity()).shareRunThrough()));
    }

    private static Evaluation run(SimulationRequest request, double capacity) {
        Line line = request.line().with(request.line().accumulator().resizedTo(capacity));
        return new Evaluator(2, () -> false).evaluate(line, request.run());
    }
}
