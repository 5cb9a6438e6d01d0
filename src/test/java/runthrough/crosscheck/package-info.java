/**
 * The engine held against a second one, written separately in another language from the description of the model alone: {@code
 * src/test/python/line_model.py}, in process style on SimPy. Both run the same lines, each draws its own random numbers, and
 * they must agree coil change by coil change.
 *
 * <p>Main types: {@link runthrough.crosscheck.CrossCheckTest}; {@link runthrough.crosscheck.SecondEngine} makes the lines and
 * runs them, {@link runthrough.crosscheck.DescribedLine} reads them for this engine. {@link
 * runthrough.crosscheck.ExampleLinesTest} holds this engine against the hand calculations beside the example lines.
 */
@NullMarked
package runthrough.crosscheck;

import org.jspecify.annotations.NullMarked;
