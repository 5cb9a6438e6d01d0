package runthrough.study.sizing;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.Kind;
import runthrough.study.cause.Reason;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;

/**
 * One change of a line for which no capacity is enough.
 *
 * @param what is changed
 * @param element that is shortened; only with {@link What#ELEMENT}
 * @param shift whose crew it is, by name; only with {@link What#CREW_OF_SHIFT}
 * @param now its present value, in the unit of {@link What}; may be infinite for "no limit"
 * @param needed the value nearest to the present one with which some capacity is enough; empty when {@code tried} does not do
 *     either
 * @param tried the furthest value that was tried
 * @param cost what comes out with the value needed and an accumulator that is enough; of a process speed
 */
public record Remedy(
        What what,
        Optional<Reason.Element> element,
        Optional<String> shift,
        double now,
        OptionalDouble needed,
        double tried,
        Optional<LeverAnswer.Cost> cost) {

    /** A remedy that is neither of an element nor of a shift. */
    Remedy(What what, double now, OptionalDouble needed, double tried) {
        this(what, Optional.empty(), Optional.empty(), now, needed, tried, Optional.empty());
    }

    /** The lever that is moved; empty where it is none. */
    public Optional<Lever> lever() {
        return what.lever().map(moved -> new Lever(moved, element));
    }

    /** What is changed. A lever is what it is in every other study. */
    public enum What {
        /** The lever {@link Lever.What#JOINT_CYCLE_TIME} (s). */
        JOINT_CYCLE_TIME(Lever.What.JOINT_CYCLE_TIME),
        /** The lever {@link Lever.What#PROCESS_SPEED} (m/s). */
        PROCESS_SPEED(Lever.What.PROCESS_SPEED),
        /** The lever {@link Lever.What#REJECTS}. */
        REJECTS(Lever.What.REJECTS),
        /** The lever {@link Lever.What#CREW}: with shifts the largest, every other as many more. */
        CREW(Lever.What.CREW),
        /** How many people in one shift. */
        CREW_OF_SHIFT(null, null),
        /** Breaks of all shifts together (s). */
        BREAKS(null, Kind.TIME),
        /** The lever {@link Lever.What#UNCOILERS}. */
        UNCOILERS(Lever.What.UNCOILERS),
        /** The lever {@link Lever.What#ENTRY_TOP_SPEED} (m/s). */
        ENTRY_TOP_SPEED(Lever.What.ENTRY_TOP_SPEED),
        /** How much faster than the process the entry may fill (m/s). */
        FILL_RATE_LIMIT(null, Kind.SPEED),
        /** The mean time to prepare a coil (s); every element is quicker by the same factor. */
        PREPARATION_TIME(null, Kind.TIME),
        /** The lever {@link Lever.What#ELEMENT} (s). */
        ELEMENT(Lever.What.ELEMENT);

        private final Lever.@Nullable What lever;
        private final @Nullable Kind kind;

        What(Lever.What lever) {
            this(lever, lever.kind().orElse(null));
        }

        What(Lever.@Nullable What lever, @Nullable Kind kind) {
            this.lever = lever;
            this.kind = kind;
        }

        private Optional<Lever.What> lever() {
            return Optional.ofNullable(lever);
        }

        /** What its values are about; empty for a number of people or uncoilers. */
        public Optional<Kind> kind() {
            return Optional.ofNullable(kind);
        }

        static Optional<What> of(Lever.What lever) {
            return Arrays.stream(values()).filter(what -> what.lever == lever).findFirst();
        }
    }
}
