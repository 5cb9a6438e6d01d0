/**
 * What no user would write, fed to the readers of files and to the page: {@link runthrough.fuzz.HostileInputFuzzTest}, by {@link
 * runthrough.fuzz.HostileInput}.
 *
 * <p>What failed once is kept in {@code src/test/resources/runthrough/fuzz} and tried by every build.
 */
@NullMarked
package runthrough.fuzz;

import org.jspecify.annotations.NullMarked;
