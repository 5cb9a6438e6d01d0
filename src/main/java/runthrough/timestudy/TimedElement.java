package runthrough.timestudy;

import java.util.Locale;
import java.util.Optional;

/**
 * A work element of a time-study sheet: one of its columns.
 *
 * @param part of the coil change it belongs to; empty where the sheet does not say
 * @param name as the user calls it
 * @param column of the file it stands in, counted from 1
 */
public record TimedElement(Optional<Part> part, String name, int column) {

    /** The lists of work that a coil change is made of, in their order. */
    public enum Part {
        /** Done on the next coil while the line runs. */
        PREPARE,
        /** Strip standing; needs only the old tail. */
        TAIL,
        /** Strip standing; needs both ends. */
        JOIN;

        /** As it is written in sheets and scenarios. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The part it belongs to; {@link Part#JOIN}, which keeps the strip standing, where the sheet does not say. */
    public Part partOrJoin() {
        return part.orElse(Part.JOIN);
    }

    /** Whether the strip stands while it is done. */
    public boolean isStanding() {
        return partOrJoin() != Part.PREPARE;
    }

    /** Part and name, such as {@code join: weld}; the name alone where the sheet gives no part. */
    public String label() {
        return part.map(list -> list.word() + ": " + name).orElse(name);
    }
}
