package runthrough.study.cause;

import java.util.Locale;
import java.util.Optional;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * The cause of a coil change that did not run through, by name.
 *
 * @param cause of it
 * @param element of work that it is named by, where it is named by one
 */
public record Reason(Cause cause, Optional<Element> element) {

    /**
     * An element of work.
     *
     * @param list that it stands in
     * @param place in that list, from 0
     * @param name as the user calls it; one that comes again in its list has the number of its coming appended
     */
    public record Element(WorkList list, int place, String name) {

        /** List and name: {@code join/weld}. */
        public String path() {
            return list.name().toLowerCase(Locale.ROOT) + "/" + name;
        }
    }

    /** The cause, with the element that it is named by. */
    public String words() {
        return cause.words() + element.map(named -> ": " + named.name()).orElse("");
    }

    /** What is removed with it: where the next coil was not prepared, all preparation, whatever element was waited for. */
    public Reason removed() {
        return cause == Cause.WAITING_FOR_PREPARATION ? of(cause) : this;
    }

    static Reason of(Cause cause) {
        return new Reason(cause, Optional.empty());
    }

    static Reason of(Cause cause, Element element) {
        return new Reason(cause, Optional.of(element));
    }
}
