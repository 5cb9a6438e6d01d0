/**
 * The command line: reads what the user asks for, hands it on, prints the answer and sets the exit code.
 *
 * <p>Entry point: {@link runthrough.cli.Main}. No physics and no statistics live here. Exit codes: 0 done; 2 bad
 * input.
 */
@NullMarked
package runthrough.cli;

import org.jspecify.annotations.NullMarked;
