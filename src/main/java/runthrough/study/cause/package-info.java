/**
 * Why coil changes did not run through: the first thing whose removal would have let them.
 *
 * <p>Main types: {@link runthrough.study.cause.CauseFinder} finds the {@link runthrough.study.cause.Reason} of a coil change.
 */
@NullMarked
package runthrough.study.cause;

import org.jspecify.annotations.NullMarked;
