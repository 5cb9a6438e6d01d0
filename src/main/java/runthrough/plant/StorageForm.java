package runthrough.plant;

import java.util.Optional;

/** How an accumulator holds strip, and so how much of it. */
public sealed interface StorageForm {

    /** Usable capacity C (m), {@code >= 0}. */
    double capacity();

    /**
     * The same form made to hold {@code capacity} (m), {@code > 0}, by what is adjustable of it; all else stays.
     *
     * @throws UnsupportedOperationException when there is no accumulator
     */
    StorageForm resizedTo(double capacity);

    /** What a designer adjusts to give it another capacity; empty when there is no accumulator. */
    Optional<Adjustable> adjustable();

    /**
     * What gives a form its capacity.
     *
     * @param measure which it is
     * @param metres its value (m), {@code >= 0}
     */
    record Adjustable(Measure measure, double metres) {}

    /** What gives a form its capacity; each in metres. */
    enum Measure {
        /** The capacity itself. */
        CAPACITY,
        /** Carriage travel. */
        STROKE,
        /** Sag of the full loop. */
        GREATEST_SAG,
        /** Mean diameter of a wrap when full. */
        FULL_DIAMETER
    }

    /** Greatest rate at which the form itself can take up strip (m/s); infinite when it sets no limit. */
    default double fillRateLimit() {
        return Double.POSITIVE_INFINITY;
    }

    /** Greatest rate at which the form itself can give strip (m/s); infinite when it sets no limit. */
    default double emptyingRateLimit() {
        return Double.POSITIVE_INFINITY;
    }

    /** The same form taking up strip {@code factor} times as fast, {@code > 0}, where it sets a limit to that. */
    default StorageForm fillingTimesAsFast(double factor) {
        return this;
    }

    /** Capacity given directly (m). Rule ACC-1. */
    record Direct(double capacity) implements StorageForm {
        public Direct {
            Ranges.of("accumulator").holding("capacity", capacity).refuse();
        }

        @Override
        public Direct resizedTo(double wanted) {
            return new Direct(wanted);
        }

        @Override
        public Optional<Adjustable> adjustable() {
            return Optional.of(new Adjustable(Measure.CAPACITY, capacity));
        }
    }

    /**
     * Strands that lengthen between fixed rolls and a carriage, horizontal or vertical: {@code C = n stroke}.
     *
     * <p>Rules ACC-2, ACC-7.
     *
     * @param strands how many lengthen, {@code >= 1}
     * @param stroke carriage travel (m), {@code >= 0}
     * @param fillingSpeed greatest carriage speed when filling (m/s), {@code > 0}, infinite for no limit
     * @param emptyingSpeed greatest carriage speed when emptying (m/s), {@code > 0}, infinite for no limit
     * @param vertical whether the carriage moves up and down: for drawings only
     */
    record Strands(int strands, double stroke, double fillingSpeed, double emptyingSpeed, boolean vertical)
            implements StorageForm {
        public Strands {
            Ranges.of("accumulator")
                    .atLeastOne("strands", strands)
                    .holding("stroke", stroke)
                    .positive("carriage speed", fillingSpeed, Ranges.Of.SPEED_LIMIT)
                    .positive("emptying speed", emptyingSpeed, Ranges.Of.SPEED_LIMIT)
                    .refuse();
        }

        @Override
        public double capacity() {
            return strands * stroke;
        }

        /** The same with another number of strands, {@code >= 1}. */
        public Strands withStrands(int number) {
            return new Strands(number, stroke, fillingSpeed, emptyingSpeed, vertical);
        }

        @Override
        public Strands resizedTo(double wanted) {
            return new Strands(strands, wanted / strands, fillingSpeed, emptyingSpeed, vertical);
        }

        @Override
        public Optional<Adjustable> adjustable() {
            return Optional.of(new Adjustable(Measure.STROKE, stroke));
        }

        @Override
        public double fillRateLimit() {
            return strands * fillingSpeed;
        }

        @Override
        public Strands fillingTimesAsFast(double factor) {
            return new Strands(strands, stroke, fillingSpeed * factor, emptyingSpeed, vertical);
        }

        @Override
        public double emptyingRateLimit() {
            return strands * emptyingSpeed;
        }
    }

    /**
     * Free loops hanging in a pit as catenaries: {@code C = n (arc(greatest sag) - arc(least sag))}.
     *
     * <p>Rule ACC-3.
     *
     * @param loops how many, {@code >= 1}
     * @param span distance between the supports (m), {@code > 0}
     * @param greatestSag sag of the full loop (m), {@code >= leastSag}
     * @param leastSag sag of the empty loop (m), {@code >= 0}
     */
    record FreeLoop(int loops, double span, double greatestSag, double leastSag) implements StorageForm {
        public FreeLoop {
            Ranges.of("accumulator")
                    .atLeastOne("loops", loops)
                    .finitePositive("span", span, Ranges.Of.LENGTH)
                    .from(leastSag, "least sag", "greatest sag", greatestSag, Ranges.Of.LENGTH)
                    .notNegative("least sag", leastSag, Ranges.Of.LENGTH)
                    .refuse();
        }

        @Override
        public double capacity() {
            return loops * (Catenary.arc(span, greatestSag) - Catenary.arc(span, leastSag));
        }

        @Override
        public FreeLoop resizedTo(double wanted) {
            double arc = Catenary.arc(span, leastSag) + wanted / loops;
            return new FreeLoop(loops, span, Math.max(leastSag, Catenary.sag(span, arc)), leastSag);
        }

        @Override
        public Optional<Adjustable> adjustable() {
            return Optional.of(new Adjustable(Measure.GREATEST_SAG, greatestSag));
        }
    }

    /**
     * Wraps moved from a small to a large mean diameter: {@code C = n pi (D_full - D_empty)}.
     *
     * <p>Rule ACC-4.
     *
     * @param wraps how many, {@code > 0}
     * @param fullDiameter mean diameter of a wrap when full (m), {@code >= emptyDiameter}
     * @param emptyDiameter mean diameter of a wrap when empty (m), {@code > 0}
     */
    record Spiral(double wraps, double fullDiameter, double emptyDiameter) implements StorageForm {
        public Spiral {
            Ranges.of("accumulator")
                    .finitePositive("wraps", wraps, Ranges.Of.NUMBER)
                    .from(emptyDiameter, "empty diameter", "full diameter", fullDiameter, Ranges.Of.LENGTH)
                    .finitePositive("empty diameter", emptyDiameter, Ranges.Of.LENGTH)
                    .refuse();
        }

        @Override
        public double capacity() {
            return wraps * Math.PI * (fullDiameter - emptyDiameter);
        }

        @Override
        public Spiral resizedTo(double wanted) {
            return new Spiral(wraps, emptyDiameter + wanted / (wraps * Math.PI), emptyDiameter);
        }

        @Override
        public Optional<Adjustable> adjustable() {
            return Optional.of(new Adjustable(Measure.FULL_DIAMETER, fullDiameter));
        }
    }

    /** No accumulator: entry and process are one strip. Rule ACC-5. */
    record None() implements StorageForm {
        @Override
        public double capacity() {
            return 0;
        }

        @Override
        public StorageForm resizedTo(double wanted) {
            throw new UnsupportedOperationException("there is no accumulator to resize to " + wanted + " m");
        }

        @Override
        public Optional<Adjustable> adjustable() {
            return Optional.empty();
        }
    }
}
