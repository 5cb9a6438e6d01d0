package runthrough.report.validation;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;

/** What a test recorded of one check against an outside value. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Recorded.OfNumber.class, name = "number"),
    @JsonSubTypes.Type(value = Recorded.OfText.class, name = "text"),
    @JsonSubTypes.Type(value = Recorded.OfErrors.class, name = "errors")
})
public sealed interface Recorded {

    /** Part of the page. */
    Topic topic();

    /** Short name, unique together with {@link #what}. */
    String id();

    /** What is checked. */
    String what();

    /** Where the outside value comes from. */
    Reference source();

    /** Why the tolerance is what it is, in a few words. */
    String rule();

    /** Whether it agrees within the tolerance. */
    @JsonIgnore
    boolean passed();

    /**
     * A number held against an outside one.
     *
     * @param unit of all numbers; empty for a plain number
     * @param expected the outside value
     * @param got the program's value
     * @param tolerance greatest difference allowed, {@code >= 0}; 0 for the same to the last bit
     * @param standardError of {@code got} where it is estimated by sampling, {@code > 0}; 0 where it is computed
     */
    record OfNumber(
            Topic topic,
            String id,
            String what,
            Reference source,
            String unit,
            double expected,
            double got,
            double tolerance,
            String rule,
            double standardError)
            implements Recorded {

        public OfNumber {
            if (!(tolerance >= 0) || !(standardError >= 0)) {
                throw new IllegalArgumentException(
                        id + ": tolerance " + tolerance + ", standard error " + standardError + "; must be 0 or more");
            }
        }

        /** Distance from the outside value, in the unit; not a number where {@code got} is none. */
        public double error() {
            return Math.abs(got - expected);
        }

        @Override
        public boolean passed() {
            return error() <= tolerance;
        }
    }

    /**
     * Text that must be the same, such as the state of a random number generator.
     *
     * @param expected the outside value
     * @param got the program's value
     */
    record OfText(Topic topic, String id, String what, Reference source, String expected, String got)
            implements Recorded {

        @Override
        public String rule() {
            return "the same";
        }

        @Override
        public boolean passed() {
            return got.equals(expected);
        }
    }

    /**
     * Many comparisons of the same kind, such as one for each random line.
     *
     * @param each what there is one error for
     * @param tolerance greatest error allowed, {@code > 0}
     * @param errors one for each, {@code >= 0}
     */
    record OfErrors(
            Topic topic,
            String id,
            String what,
            Reference source,
            String each,
            double tolerance,
            String rule,
            List<Double> errors)
            implements Recorded {

        public OfErrors {
            errors = List.copyOf(errors);
            if (!(tolerance > 0) || errors.isEmpty()) {
                throw new IllegalArgumentException(id + ": tolerance " + tolerance + ", " + errors.size()
                        + " errors; must be more than 0 and some");
            }
        }

        /** The greatest of all errors; not a number where one is none. */
        public double greatest() {
            return errors.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        }

        @Override
        public boolean passed() {
            return greatest() <= tolerance;
        }
    }
}
