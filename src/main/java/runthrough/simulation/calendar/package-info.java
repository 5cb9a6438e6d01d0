/**
 * The clock of a run: its events, and their order at one instant.
 *
 * <p>Main types: {@link runthrough.simulation.calendar.EventCalendar} holds the timers; {@link
 * runthrough.simulation.calendar.EventOrder} says what goes first. Times in seconds from the start of the run.
 *
 * <h2>Rules of event handling</h2>
 *
 * <ol>
 *   <li>At one instant events go by {@code EventOrder}: (1) ramps reach their target; (2) tail stopped, settled, creep marks;
 *       (3) ends and beginnings of shifts and breaks, then timers (work elements, restart delay, end of downtime or repair), in the
 *       order in which they were set; (4) process downtime falls due; (5) a joint reaches the process: new rated speed, then joint
 *       passages begin or end, then joints break; (6) a coil change starts; (7) the settled level reaches the capacity; (8) starved;
 *       (9) slowed; (10) full speed resumed; (11) restart; (12) the tail left its uncoiler; (13) end of a run of given time.
 *   <li>After each, plans are made anew, the process's before the entry's, so a later event sees what an earlier one did. The
 *       tail has stopped, and the entry is settled, in the plans that follow the end of a ramp, at once.
 *   <li>On arrival values are set exactly: a speed to its target, the remaining strip to 0 when the tail has stopped, the
 *       level to the capacity when the entry settled from filling.
 *   <li>A level is below a threshold when it is so by more than {@code 1e-10 max(1, C)}: a touch is no crossing.
 *   <li>What is watched lasts until the next event, that event's instant included.
 *   <li>More than 1000 events at one instant, none left, or a time that is not a number, is an error that says what happened,
 *       when, and how the line stood.
 * </ol>
 */
@NullMarked
package runthrough.simulation.calendar;

import org.jspecify.annotations.NullMarked;
