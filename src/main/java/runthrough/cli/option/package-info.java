/** Kinds of values that options of several commands take. */
@NullMarked
package runthrough.cli.option;

import org.jspecify.annotations.NullMarked;
