package runthrough.study.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.sweep.SweepStudy.Asked;

/** Whatever goes wrong in a case, it is said of that case and stops no other. */
class SweepStudyTest {
    private static final Cases CASES =
            Cases.listed(List.of(Map.of("is", "refused"), Map.of("is", "impossible"), Map.of("is", "broken")));

    private static Asked asked(Map<String, String> values) {
        return switch (values.getOrDefault("is", "")) {
            case "refused" -> new Asked.Refused("it is not\nallowed");
            case "impossible" -> throw new StudyException("no coil change was completed");
            default -> throw new IllegalStateException("a fault");
        };
    }

    @Test
    void aCaseThatCannotBeRunSaysWhyOnOneLine() {
        List<CaseResult> results = new ArrayList<>();

        new SweepStudy(CASES, SweepStudyTest::asked).run(new int[] {2, 0, 1}, 2, StudyListener.NONE, results::add);

        assertThat(results).extracting(CaseResult::number).containsExactly(3, 1, 2);
        assertThat(results)
                .extracting(CaseResult::failure)
                .containsExactly(
                        "internal error (java.lang.IllegalStateException: a fault). This is a fault of the program.",
                        "it is not allowed",
                        "no coil change was completed");
        assertThat(results).allMatch(result -> result.verdict().isEmpty());
    }

    @Test
    void aSweepThatIsGivenUpIsNoCaseThatFailed() {
        StudyListener impatient = new StudyListener() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };

        assertThatThrownBy(() -> new SweepStudy(CASES, SweepStudyTest::asked)
                        .run(
                                new int[] {0},
                                1,
                                impatient,
                                result -> assertThat(result).isNull()))
                .isInstanceOf(CancellationException.class);
        assertThatThrownBy(() -> new SweepStudy(CASES, values -> {
                            throw new CancellationException();
                        })
                        .run(
                                new int[] {0},
                                1,
                                StudyListener.NONE,
                                result -> assertThat(result).isNull()))
                .isInstanceOf(CancellationException.class);
    }
}
