package runthrough.study.lever;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.LineFigure;
import runthrough.quantity.Kind;
import runthrough.study.cause.Reason;
import runthrough.study.search.Crossing.Harder;

/**
 * Something of a line that can be varied by itself.
 *
 * <p>Rules LEVER-1, LEVER-3, LEVER-5, LEVER-6, LEVER-7, LEVER-8.
 *
 * @param what it is
 * @param element that is shortened; only with {@link What#ELEMENT}
 */
public record Lever(What what, Optional<Reason.Element> element) {

    /** A lever that is no element of work. */
    public static Lever of(What what) {
        return new Lever(what, Optional.empty());
    }

    /** What can be varied. */
    public enum What {
        /** Usable capacity (m). */
        CAPACITY(LineFigure.USABLE_CAPACITY.path(), Kind.LENGTH, Harder.SMALLER),
        /** Seconds on every pass of the join work (s), 0 now; negative: off it. */
        JOINT_CYCLE_TIME(LineFigure.JOINT_CYCLE_TIME.path(), Kind.TIME, Harder.LARGER),
        /** Fastest rated process speed of any coil (m/s). */
        PROCESS_SPEED(LineFigure.RATED_SPEED.path(), Kind.SPEED, Harder.LARGER),
        /** Chance that a joint is rejected, or the share of joints where it is every n-th. */
        REJECTS("coil-change.reject.chance", Kind.SHARE, Harder.LARGER),
        /** People. */
        CREW("coil-change.crew", null, Harder.SMALLER),
        /** Uncoilers. */
        UNCOILERS("entry.uncoilers", null, Harder.SMALLER),
        /** Top speed of the entry (m/s). */
        ENTRY_TOP_SPEED("entry.top-speed", Kind.SPEED, Harder.SMALLER),
        /** Mean length of the coils as they come (m), crops included. */
        COIL_LENGTH(LineFigure.COIL_LENGTH.path(), Kind.LENGTH, Harder.SMALLER),
        /** Seconds off a named element each time it is done (s), 0 now. */
        ELEMENT(null, Kind.TIME, Harder.SMALLER);

        private final @Nullable String path;
        private final @Nullable Kind kind;
        private final Harder harder;

        What(@Nullable String path, @Nullable Kind kind, Harder harder) {
            this.path = path;
            this.kind = kind;
            this.harder = harder;
        }

        /**
         * What is varied where the number called {@code path} is, or one that is another measure of the same; empty where that is no
         * lever.
         */
        public static Optional<What> at(String path) {
            return switch (path) {
                case "accumulator.strands", "accumulator.capacity" -> Optional.of(CAPACITY);
                case "process.speed" -> Optional.of(PROCESS_SPEED);
                case "coil-change.join-shorter-by" -> Optional.of(JOINT_CYCLE_TIME);
                default ->
                    Stream.of(values()).filter(what -> path.equals(what.path)).findFirst();
            };
        }

        /** The path of the number that it is in a description; empty for elements, of which there are many. */
        public Optional<String> path() {
            return Optional.ofNullable(path);
        }

        /** What its values are about; empty for a number of people or uncoilers. */
        public Optional<Kind> kind() {
            return Optional.ofNullable(kind);
        }

        /** Which of its values are harder on the line. */
        public Harder harder() {
            return harder;
        }
    }
}
