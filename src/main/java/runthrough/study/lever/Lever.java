package runthrough.study.lever;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
        CAPACITY(Kind.LENGTH, Harder.SMALLER),
        /** Seconds on every pass of the join work (s), 0 now; negative: off it. */
        JOINT_CYCLE_TIME(Kind.TIME, Harder.LARGER),
        /** Fastest rated process speed of any coil (m/s). */
        PROCESS_SPEED(Kind.SPEED, Harder.LARGER),
        /** Chance that a joint is rejected, or the share of joints where it is every n-th. */
        REJECTS(Kind.SHARE, Harder.LARGER),
        /** People. */
        CREW(null, Harder.SMALLER),
        /** Uncoilers. */
        UNCOILERS(null, Harder.SMALLER),
        /** Top speed of the entry (m/s). */
        ENTRY_TOP_SPEED(Kind.SPEED, Harder.SMALLER),
        /** Mean length of the coils as they come (m), crops included. */
        COIL_LENGTH(Kind.LENGTH, Harder.SMALLER),
        /** Seconds off a named element each time it is done (s), 0 now. */
        ELEMENT(Kind.TIME, Harder.SMALLER);

        private final @Nullable Kind kind;
        private final Harder harder;

        What(@Nullable Kind kind, Harder harder) {
            this.kind = kind;
            this.harder = harder;
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
