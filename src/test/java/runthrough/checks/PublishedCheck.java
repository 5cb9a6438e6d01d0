package runthrough.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.Numbers;
import runthrough.report.validation.Recorded;
import runthrough.report.validation.Reference;
import runthrough.report.validation.Topic;

/**
 * A check in the making: where the outside value comes from, the value, how near the program must come to it, and, last, what
 * the program gives, which is recorded and then asserted.
 */
public final class PublishedCheck {
    /** How many standard errors a sampled value may be off. */
    public static final double STANDARD_ERRORS = 3;

    private final CheckBook book;
    private final Topic topic;
    private final String id;
    private final String what;
    private @Nullable Reference source;
    private String unit = "";
    private double expected = Double.NaN;
    private double tolerance = Double.NaN;
    private double standardError;
    private String rule = "";

    PublishedCheck(CheckBook book, Topic topic, String id, String what) {
        this.book = book;
        this.topic = topic;
        this.id = id;
        this.what = what;
    }

    public PublishedCheck source(Reference from) {
        source = from;
        return this;
    }

    public PublishedCheck unit(String symbol) {
        unit = symbol;
        return this;
    }

    public PublishedCheck expected(double value) {
        expected = value;
        return this;
    }

    /** To the last bit. */
    public PublishedCheck exactly() {
        return within(0, "to the last bit");
    }

    /** Within {@code share} of the outside value. */
    public PublishedCheck relative(double share) {
        return within(share * Math.abs(expected), share(share) + " of the value");
    }

    /**
     * Within {@code difference} in the unit.
     *
     * @param why so many, in a few words
     */
    public PublishedCheck within(double difference, String why) {
        tolerance = difference;
        rule = why;
        return this;
    }

    /**
     * Within three standard errors, or within {@code share} of the outside value where that is more.
     *
     * @param error standard error of what the program gives
     */
    public PublishedCheck sampled(double error, double share) {
        standardError = error;
        double byShare = share * Math.abs(expected);
        String what = "3 standard errors";
        return within(
                Math.max(STANDARD_ERRORS * error, byShare),
                share == 0 ? what : what + ", at least " + Numbers.text(100 * share) + " %");
    }

    /** Records what the program gives, and asserts it. */
    public void got(double value) {
        book.add(new Recorded.OfNumber(topic, id, what, from(), unit, expected, value, tolerance, rule, standardError));
        assertThat(value).as("%s, %s", id, what).isCloseTo(expected, Offset.offset(tolerance));
    }

    /** Records and asserts that the program gives the same text. */
    public void same(String outside, String got) {
        book.add(new Recorded.OfText(topic, id, what, from(), outside, got));
        assertThat(got).as("%s, %s", id, what).isEqualTo(outside);
    }

    /**
     * Records the errors of many comparisons of the same kind, and asserts that none is above the tolerance.
     *
     * @param each what there is one error for
     */
    public void errors(String each, List<Double> errors) {
        book.add(new Recorded.OfErrors(topic, id, what, from(), each, tolerance, rule, errors));
        assertThat(errors).as("%s, %s", id, what).allMatch(error -> error <= tolerance);
    }

    private Reference from() {
        return Objects.requireNonNull(source, "a check needs its source");
    }

    private static String share(double share) {
        return share >= 1e-4
                ? Numbers.text(100 * share) + " %"
                : Double.toString(share).replace(".0E", "e");
    }
}
