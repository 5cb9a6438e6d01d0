/**
 * Checks against the outside world, recorded while they are asserted: what a test compares with a published, certified or
 * separately derived value goes into {@code target/checks}, from which the command {@code validation} makes its page.
 *
 * <p>Main types: {@link runthrough.checks.RecordsChecks} on a test class gives its tests a {@link
 * runthrough.checks.CheckBook}; {@link runthrough.checks.Sources} names where outside values come from.
 *
 * <p>Nothing is written unless the build asks for it by the system property {@code runthrough.checks}, so that a test run in
 * an editor, or on a mutated program, leaves no record.
 */
@NullMarked
package runthrough.checks;

import org.jspecify.annotations.NullMarked;
