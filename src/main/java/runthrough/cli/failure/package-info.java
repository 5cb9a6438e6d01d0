/** How what went wrong is shown on standard error: a mistyped command line, bad input, a fault of the program. */
@NullMarked
package runthrough.cli.failure;

import org.jspecify.annotations.NullMarked;
