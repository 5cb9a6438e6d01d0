package runthrough.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.study.statistics.Interval;

class CellTest {
    private static final Notation METRES = Notation.of(Unit.METRE);
    private static final Notation YEARS = Notation.PLAIN.with(Rounding.AMOUNT).called("years");

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

    private static Cell known(double mean, double low, double high) {
        Interval interval = new Interval(low, high, Interval.Method.STUDENT_T);
        return new Cell.Known(new Value(mean, YEARS, Optional.of(interval)), "never");
    }

    @Test
    void aNumberAndItsIntervalTakeOnePlace() {
        // Half of 0.51 years leaves the hundredths certain.
        assertThat(known(2.5, 2.27, 2.78).bare()).isEqualTo("2.50 (2.27\u00a0to\u00a02.78)");
        assertThat(known(2.5, 2.27, 2.78).text()).isEqualTo("2.50 years (2.27\u00a0to\u00a02.78)");
    }

    @Test
    void whereThereIsNoEndWordsStand() {
        assertThat(known(5, 3, Double.POSITIVE_INFINITY).bare()).isEqualTo("5.00 (3.00\u00a0to\u00a0never)");
        assertThat(known(Double.POSITIVE_INFINITY, 8, Double.POSITIVE_INFINITY).bare())
                .isEqualTo("never (8.00\u00a0to\u00a0never)");
    }

    @Test
    void oneNumberMayStandInTwoUnits() {
        Value newton = Value.of(1230.5, Notation.of(Unit.NEWTON).with(Rounding.GIVEN));
        Value kilonewton = Value.of(1230.5, Notation.of(Unit.KILONEWTON));

        assertThat(new Cell.Twice(newton, kilonewton).text()).isEqualTo("1230.5 N = 1.23 kN");
    }

    @Test
    void aGainThatIsNotShownIsSaidInWords_andOneThatIsShownIsANumber() {
        Value none = new Value(0, Notation.PLAIN, Optional.of(new Interval(-8, 8, Interval.Method.STUDENT_T)));
        Value some = new Value(20, Notation.PLAIN, Optional.of(new Interval(12, 28, Interval.Method.STUDENT_T)));
        assertThat(Cell.gain(none).text()).isEqualTo("no difference shown (-8\u00a0to\u00a08)");
        assertThat(Cell.gain(some).text()).isEqualTo("20 (12\u00a0to\u00a028)");
    }
}
