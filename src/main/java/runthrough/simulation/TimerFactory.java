package runthrough.simulation;

/** Makes timers whose action finds the strip brought up to date, and after which all plans are made anew. */
@FunctionalInterface
interface TimerFactory {
    EventCalendar.Timer timer(String name, int order, Runnable action);
}
