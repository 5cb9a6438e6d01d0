package runthrough.simulation.calendar;

/** What the calendar's events happen to. */
@FunctionalInterface
public interface Watched {

    /** How it stands, for error messages. */
    String describe();

    /** Brings it up to the present, before an event that changes its motion. */
    default void catchUp() {}

    /** Makes all plans anew, after such an event. */
    default void replan() {}
}
