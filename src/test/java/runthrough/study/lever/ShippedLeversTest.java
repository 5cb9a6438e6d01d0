package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;

/** The promise of a lever, on every shipped line: with its value the target is met, with a tenth less of the change it is not. */
class ShippedLeversTest {
    /** Enough to show the targets of the shipped lines, and soon done. */
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
    void withItsValueTheTargetIsMet_andWithATenthLessItIsNot(String name) {
        SimulationRequest asked = ((ScenarioReading.Accepted)
                        ScenarioFile.open(Path.of("scenarios", name + ".yaml")).read())
                .request();
        SimulationRequest request = asked.with(asked.run().withReplications(REPLICATIONS));
        Levers levers = new LeverStudy(request).run(2, StudyListener.NONE);

        // Rule LEVER-2.
        for (LeverAnswer answer : levers.enough()) {
            Varied varied = varied(new LineLevers(request.line(), request.resultsIn()), answer.lever());
            double value = answer.value().orElseThrow();
            double less = Math.max(varied.scale().step(), Math.abs(value - varied.present()) / 10);
            assertThat(isMet(answer, varied, value, request))
                    .as("%s with %s", answer.lever(), value)
                    .isTrue();
            double harder = value > varied.present() ? value - less : value + less;
            assertThat(isMet(answer, varied, harder, request))
                    .as("%s with %s", answer.lever(), harder)
                    .isFalse();
        }
    }

    private static Varied varied(LineLevers levers, Lever lever) {
        return switch (lever.what()) {
            case CAPACITY -> levers.capacity();
            case JOINT_CYCLE_TIME -> levers.jointCycleTime();
            case PROCESS_SPEED -> levers.processSpeed();
            case REJECTS -> levers.rejects();
            case CREW -> levers.crew();
            case UNCOILERS -> levers.uncoilers();
            case ENTRY_TOP_SPEED -> levers.entryTopSpeed();
            case COIL_LENGTH -> levers.coilLength();
            case ELEMENT -> levers.element(lever.element().orElseThrow());
        };
    }

    private static boolean isMet(LeverAnswer answer, Varied varied, double value, SimulationRequest request) {
        return new Evaluator(2, () -> false)
                .attempt(varied.variant().apply(value), request.run())
                .filter(evaluation -> answer.isShown()
                        ? evaluation.answer(answer.goal()) == TargetStatus.MEETS
                        : isSeen(answer, evaluation))
                .isPresent();
    }

    private static boolean isSeen(LeverAnswer answer, Evaluation evaluation) {
        return answer.goal().reached(evaluation) >= answer.goal().target() * evaluation.changes();
    }
}
