/**
 * What a line's own log shows of its coil changes: when tails stopped, joints were released, and the process stood and ran.
 *
 * <p>Main types: {@link runthrough.linelog.LineEvent}, and {@link runthrough.linelog.LineLog}, which derives joints, stops and
 * what came of each coil change. A simulated run is read by the same rules as a logged one, so that the two can be compared.
 *
 * <p>Units: seconds, from any origin. Invariants: events come in order of time; nothing here knows the file format or the
 * model.
 */
@NullMarked
package runthrough.linelog;

import org.jspecify.annotations.NullMarked;
