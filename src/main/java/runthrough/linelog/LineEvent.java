package runthrough.linelog;

import java.util.Locale;

/**
 * Something that a line's log notes.
 *
 * @param time of it (s)
 * @param what happened
 * @param coil it belongs to, as the log calls it; may be empty
 */
public record LineEvent(double time, What what, String coil) {

    /** What may happen; at one instant in this order. */
    public enum What {
        /** The tail of a coil has come to rest in the joiner. */
        TAIL_STOPPED,
        /** The joint is made and let go. */
        JOINT_RELEASED,
        /** The process stands. */
        LINE_STOPPED,
        /** The process moves again. */
        LINE_RUNNING;

        /** As it is written in a log. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
