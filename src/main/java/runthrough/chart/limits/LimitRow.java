package runthrough.chart.limits;

import java.util.OptionalDouble;

/**
 * One limit as it is drawn. All numbers are on the axis of its chart: relative to the present value, or in seconds.
 *
 * @param name of the limit
 * @param text that stands over the bar: the values in the user's units
 * @param limit where the target is lost; empty when it is not within reach
 * @param isReached whether {@code limit} is such a value, and not only the end of what was tried
 * @param low lower end of its interval; empty where there is none
 * @param high upper end of its interval; empty where there is none
 * @param closedForm the limit by closed form; empty where it knows none
 * @param isSpare whether the line as it is lies on the good side
 */
public record LimitRow(
        String name,
        String text,
        OptionalDouble limit,
        boolean isReached,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble closedForm,
        boolean isSpare) {}
