package runthrough.study.map;

import runthrough.plant.Line;

/** From two numbers to the line that has them. Called on several threads. */
@FunctionalInterface
public interface MapVariants {

    /** The line with {@code x} and {@code y} (SI), or why there is none. */
    Variant at(double x, double y);

    /** A line, or none. */
    sealed interface Variant {

        /** A line that passed its check. */
        record Possible(Line line) implements Variant {}

        /**
         * No line can have these numbers.
         *
         * @param why for people
         */
        record Refused(String why) implements Variant {}
    }
}
