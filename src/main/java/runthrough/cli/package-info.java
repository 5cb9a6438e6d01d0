/**
 * The command line: reads what the user asks for, hands it on, prints the answer and sets the exit code.
 *
 * <p>Main types: {@link runthrough.cli.Main} (where the program starts), {@link runthrough.cli.Program} (one run of it in
 * given {@link runthrough.cli.terminal.Environment}), the classes named {@code ...Command} (one for each command), {@link
 * runthrough.cli.terminal.ExitCode}.
 *
 * <p>No physics and no statistics live here. Invariants: answers go to standard output, everything else to standard error;
 * no user meets a stack trace who has not asked for one; nothing is printed in colour, and no progress is shown, but at a
 * terminal.
 */
@NullMarked
package runthrough.cli;

import org.jspecify.annotations.NullMarked;
