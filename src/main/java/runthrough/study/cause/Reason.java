package runthrough.study.cause;

import java.util.Optional;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * Why a coil change did not run through.
 *
 * @param kind what would have let it through
 * @param element the element of work that it is named by, where it is named by one
 */
public record Reason(Kind kind, Optional<Element> element) {

    /** What would have let a coil change through, in the order in which it is tried. */
    public enum Kind {
        /** Without the waiting for preparation it would have run through. */
        WAITING_FOR_PREPARATION("waiting for preparation"),
        /** Without the waiting for people it would have run through. */
        WAITING_FOR_PEOPLE("waiting for people"),
        /** From a full accumulator it would have run through. */
        ACCUMULATOR_NOT_FULL("accumulator not full"),
        /** The joint took no more than a full accumulator bears: a faster coil, an earlier stop. */
        NOT_THE_JOINT("not the joint"),
        /** The joint was made again. */
        JOINT_MADE_AGAIN("joint made again"),
        /** An element that is not always done was done. */
        OCCASIONAL_ELEMENT("occasional element"),
        /** An element took longer than it does half of the time. */
        ELEMENT_TOOK_LONG("element took long"),
        /** Waiting for preparation and for people together. */
        BOTH_WAITS("both waits"),
        /** Only all of these together. */
        SEVERAL_TOGETHER("several together"),
        /** A usual joint takes longer than a full accumulator bears. */
        USUAL_JOINT_TOO_LONG("usual joint too long");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * An element of work.
     *
     * @param list that it stands in
     * @param place in that list, from 0
     */
    public record Element(WorkList list, int place) {}

    static Reason of(Kind kind) {
        return new Reason(kind, Optional.empty());
    }

    static Reason of(Kind kind, WorkList list, int place) {
        return new Reason(kind, Optional.of(new Element(list, place)));
    }
}
