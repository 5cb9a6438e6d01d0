/**
 * What is refused of a described line and what is warned of, before anything runs.
 *
 * <p>Main types: {@link runthrough.plant.check.LineCheck} gives all messages at once; {@link
 * runthrough.plant.check.CheckedLine} is a line of which nothing is refused, the only kind that can be run; {@link
 * runthrough.plant.check.LinePart} names the parts that messages point at.
 *
 * <p>Units: SI; in the text of a message those that were asked for.
 *
 * <p>Invariants: each record of the description checks its own ranges when it is made; here stands what relates one part of
 * the line to another. Rules CHECK-2 to CHECK-35.
 */
@NullMarked
package runthrough.plant.check;

import org.jspecify.annotations.NullMarked;
