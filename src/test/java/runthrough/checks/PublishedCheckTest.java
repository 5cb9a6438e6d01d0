package runthrough.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.report.validation.Recorded;
import runthrough.report.validation.Topic;

/** That what is asserted is what is recorded, and that a check can fail. */
class PublishedCheckTest {
    private final CheckBook book = new CheckBook();

    private PublishedCheck check() {
        return book.check(Topic.WORK, "W1", "weld")
                .source(Sources.WELD_TRAVEL)
                .unit("s")
                .expected(100);
    }

    private Recorded.OfNumber recorded() {
        return (Recorded.OfNumber) book.records().get(0);
    }

    @Test
    void aValueWithinTheToleranceIsRecordedAsItIs() {
        check().relative(1e-9).got(100.00000001);

        assertThat(recorded())
                .isEqualTo(new Recorded.OfNumber(
                        Topic.WORK,
                        "W1",
                        "weld",
                        Sources.WELD_TRAVEL,
                        "s",
                        100,
                        100.00000001,
                        100 * 1e-9,
                        "1e-9 of the value",
                        0));
        assertThat(recorded().passed()).isTrue();
    }

    @Test
    void aValueBeyondTheToleranceFailsTheTestAndIsRecorded() {
        assertThatThrownBy(() -> check().relative(1e-9).got(100.000001))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("W1, weld");
        assertThat(recorded().passed()).isFalse();
    }

    @Test
    void noNumberFailsTheTest() {
        assertThatThrownBy(() -> check().within(1, "generous").got(Double.NaN)).isInstanceOf(AssertionError.class);
        assertThat(recorded().passed()).isFalse();
    }

    @Test
    void exactlyMeansToTheLastBit() {
        assertThatThrownBy(() -> check().exactly().got(Math.nextUp(100.0))).isInstanceOf(AssertionError.class);
        book.check(Topic.WORK, "W2", "weld")
                .source(Sources.WELD_TRAVEL)
                .expected(100)
                .exactly()
                .got(100);
    }

    @Test
    void aSampledValueMayBeThreeStandardErrorsOff_orTheShareThatIsMore() {
        check().sampled(0.2, 0.003).got(100.59);
        assertThat(recorded().tolerance()).isEqualTo(0.6000000000000001);
        assertThat(recorded().standardError()).isEqualTo(0.2);

        book.check(Topic.WORK, "W2", "weld")
                .source(Sources.WELD_TRAVEL)
                .expected(100)
                .sampled(0.05, 0.003)
                .got(100.29);
        assertThatThrownBy(() -> book.check(Topic.WORK, "W3", "weld")
                        .source(Sources.WELD_TRAVEL)
                        .expected(100)
                        .sampled(0.05, 0)
                        .got(100.29))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void manyErrorsAreHeldAgainstOneTolerance() {
        assertThatThrownBy(() -> check().within(1e-9, "rule").errors("line", List.of(0.0, 2e-9)))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> book.check(Topic.WORK, "W2", "weld")
                        .source(Sources.WELD_TRAVEL)
                        .within(1e-9, "rule")
                        .errors("line", List.of(Double.NaN)))
                .isInstanceOf(AssertionError.class);
        assertThat(book.records()).noneMatch(Recorded::passed);
    }

    @Test
    void otherTextFailsTheTest() {
        assertThatThrownBy(() -> check().same("1, 2", "1, 3")).isInstanceOf(AssertionError.class);
        assertThat(book.records().get(0).passed()).isFalse();
    }

    @Test
    void theSameCheckTwice_isAMistake() {
        check().exactly().got(100);

        assertThatThrownBy(() -> check().exactly().got(100)).hasMessageContaining("two checks with the same name");
    }

    @Test
    void aCheckWithoutSourceOrTolerance_isAMistake() {
        assertThatThrownBy(() -> book.check(Topic.WORK, "W1", "weld")
                        .expected(1)
                        .exactly()
                        .got(1))
                .hasMessage("a check needs its source");
        assertThatThrownBy(() -> check().got(100)).hasMessageContaining("W1: tolerance NaN");
    }
}
