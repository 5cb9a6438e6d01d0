/**
 * Files as the user wrote them: text with its place, and what is wrong with it.
 *
 * <p>Main types: {@link runthrough.scenario.source.TextFile} (a file read with care), {@link
 * runthrough.scenario.source.YamlText} and {@link runthrough.scenario.source.CsvTable} (its parts as {@link
 * runthrough.scenario.source.Raw}), {@link runthrough.scenario.source.Problem} and {@link
 * runthrough.scenario.source.Problems}.
 *
 * <p>Invariants: every part knows the file, line and column where it stands, counted from 1; no input, however malformed,
 * leads to anything but a {@link runthrough.scenario.source.Problem}. Nothing here knows what a scenario may say.
 */
@NullMarked
package runthrough.scenario.source;

import org.jspecify.annotations.NullMarked;
