package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.cause.Cause;

/** The answers that the comments of the shipped scenarios promise. */
class ShippedAnswersTest {

    private static Verdict verdict(String name) {
        ScenarioReading reading =
                ScenarioFile.open(Path.of("scenarios", name + ".yaml")).read();
        SimulationRequest request = ((ScenarioReading.Accepted) reading).request();
        return new RunThroughStudy(request)
                .run(StudyOptions.plain(), StudyListener.NONE)
                .verdict();
    }

    // Shares in percent of coil changes, as rounded in the comments; stops per 8 h; main cause.
    @ParameterizedTest
    @CsvSource({
        "tube-line,        MISSES,    97.6, 0.7, JOINT_MADE_AGAIN",
        "tube-line-measured,MEETS,    95.9, 1.2, ELEMENT_TOOK_LONG",
        "stamping-rethread,MISSES,    0,    6.6, PRACTICE",
        "stamping-joiner,  MISSES,    88,   0.3, ELEMENT_TOOK_LONG",
        "tube-spiral,      MEETS,     99.4, 0.2, OCCASIONAL_ELEMENT",
        "roll-former,      MISSES,    60,   3.2, WAITING_FOR_PREPARATION",
        "coating-line,     MEETS,     99.8, 0,   JOINT_MADE_AGAIN",
        "slitter,          MISSES,    86.4, 8.7, ELEMENT_TOOK_LONG",
        "perforating-line, MISSES,    0,    9.8, PRACTICE",
        "galvanising-line, MISSES,    96.5, 0.6, WAITING_FOR_PEOPLE",
        "slitter-widths,   MISSES,    95,   1.1, OCCASIONAL_ELEMENT"
    })
    void theAnswerIsTheOneThatTheCommentsPromise(
            String name, TargetStatus answer, double percent, double stopsPerShift, Cause mainCause) {
        Verdict verdict = verdict(name);

        assertThat(verdict.answer()).isEqualTo(answer);
        assertThat(100 * verdict.shareRunThrough().mean()).isCloseTo(percent, within(0.51));
        assertThat(verdict.stoppages().starvedPerShift().mean()).isCloseTo(stopsPerShift, within(0.1));
        assertThat(verdict.causes().main()).contains(mainCause);
    }
}
