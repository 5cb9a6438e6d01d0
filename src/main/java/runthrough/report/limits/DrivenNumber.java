package runthrough.report.limits;

import java.util.OptionalInt;
import runthrough.report.Cell;
import runthrough.report.Value;
import runthrough.study.limits.CountLimit;

/**
 * What is said of one number that was driven: a row of the table, a figure, a row of the chart.
 *
 * @param name of the number
 * @param present its value now
 * @param limit the hardest value that meets the target, or on which side of the range it lies
 * @param low the lower end of its 95 % interval
 * @param high the upper end
 * @param shown the hardest value at which the target is shown to be met
 * @param handCalculation the limit by closed form
 * @param closedForm the same as a number; none where there is no limit within the range searched
 * @param limitingFactor what keeps the line from going further; may be empty
 */
record DrivenNumber(
        String name,
        Value present,
        Cell limit,
        Value low,
        Value high,
        Value shown,
        Cell handCalculation,
        Value closedForm,
        String limitingFactor) {
    private static final Value NOT_KNOWN = Value.plain(Double.NaN);

    static DrivenNumber of(CountLimit limit) {
        return new DrivenNumber(
                LimitWords.name(limit.what()),
                Value.plain(limit.present()),
                cell(limit.smallest()),
                NOT_KNOWN,
                NOT_KNOWN,
                value(limit.sure()),
                cell(limit.closedForm()),
                value(limit.closedForm()),
                "");
    }

    private static Cell cell(OptionalInt number) {
        return new Cell.Quantity(value(number), LimitWords.NO_NUMBER_ENOUGH);
    }

    private static Value value(OptionalInt number) {
        return Value.plain(number.isPresent() ? number.getAsInt() : Double.NaN);
    }

    /** All of it in a line. */
    String text() {
        String ends = limit.value()
                .flatMap(Value::range)
                .map(range -> " (" + range + ")")
                .orElse("");
        return "now " + present.text() + "; limit " + limit.text() + ends + "; hand calculation "
                + handCalculation.text();
    }
}
