/**
 * The engine held against a second one, written separately in another language from the description of the model alone: {@code
 * src/test/python/line_model.py}, in process style on SimPy. Both run the same lines on the same random draws and must agree
 * coil change by coil change.
 *
 * <p>Main types: {@link runthrough.crosscheck.CrossCheckTest}; {@link runthrough.crosscheck.ChosenLines} and {@link
 * runthrough.crosscheck.RandomLines} say what is run, {@link runthrough.crosscheck.SecondEngine} runs it.
 */
@NullMarked
package runthrough.crosscheck;

import org.jspecify.annotations.NullMarked;
