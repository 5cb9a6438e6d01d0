package runthrough.study.fitting;

/**
 * A number of a fitted distribution, and how well it is known.
 *
 * @param name what it is
 * @param isTime whether it is a time (s), not a plain number
 * @param value as fitted
 * @param low lower end of its 95 % interval
 * @param high upper end
 */
public record FittedParameter(String name, boolean isTime, double value, double low, double high) {}
