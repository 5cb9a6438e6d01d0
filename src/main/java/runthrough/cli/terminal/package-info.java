/** What the program runs in: streams, terminal, variables, exit codes, files written whole, and how it ends early. */
@NullMarked
package runthrough.cli.terminal;

import org.jspecify.annotations.NullMarked;
