package runthrough.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.study.statistics.Interval;

class CellTest {
    private static final Notation METRES = Notation.of(Unit.METRE);

    @Test
    void aChangeHasItsSign_alsoWhereItIsMore() {
        assertThat(change(2.1, 0.5).text()).isEqualTo("+2.1 m");
        assertThat(change(-2.1, 0.5).text()).isEqualTo("-2.1 m");
        assertThat(change(2.1, 0.5).bare()).isEqualTo("+2.1");
    }

    /** 0.3 m known to within 5 m is written as 0 m. */
    @Test
    void aChangeThatIsWrittenAsNoneHasNoSign() {
        assertThat(change(0.3, 5).text()).isEqualTo("0 m");
        assertThat(change(-0.3, 5).text()).isEqualTo("0 m");
        assertThat(new Cell.Change(Value.of(0, METRES), "").text()).isEqualTo("0 m");
    }

    @Test
    void withoutANumberAChangeSaysWhy() {
        assertThat(new Cell.Change(Value.of(Double.NaN, METRES), "not shown").bare())
                .isEqualTo("not shown");
    }

    private static Cell change(double metres, double half) {
        return new Cell.Change(
                new Value(
                        metres,
                        METRES,
                        Optional.of(new Interval(metres - half, metres + half, Interval.Method.STUDENT_T))),
                "");
    }
}
