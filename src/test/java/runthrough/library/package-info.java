/** The engine as a library: what is published, and that it runs by itself. */
@NullMarked
package runthrough.library;

import org.jspecify.annotations.NullMarked;
