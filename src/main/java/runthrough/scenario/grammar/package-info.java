/**
 * What a description may say, stated once: from the same keys come the reading and checking of a file, the JSON Schema for
 * editors and the listing for people.
 *
 * <p>Main types: {@link runthrough.scenario.grammar.Key} (a name with meaning, shape, default and example), {@link
 * runthrough.scenario.grammar.Shape} (what its value may be), {@link runthrough.scenario.grammar.Section} (keys that stand
 * together, the ways to choose between and the values that must be in order) and {@link
 * runthrough.scenario.grammar.Values} (a section that was read).
 *
 * <p>Units: every quantity is SI once it has been read. Invariants: reading never throws for what a user wrote; a shape
 * that gives nothing has added at least one problem. Nothing here knows of strip lines, only of quantities and distributions.
 */
@NullMarked
package runthrough.scenario.grammar;

import org.jspecify.annotations.NullMarked;
