package runthrough.report.document;

/**
 * A value of the scenario and where it came from.
 *
 * @param path by which the scenario calls it
 * @param value as it is written, with its unit
 * @param from where it came from, as far as that was said
 */
public record GivenValue(String path, String value, String from) {}
