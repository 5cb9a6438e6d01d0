/** The guide in {@code src/docs}: its commands are run, what it shows is compared, and its pictures are made. */
@NullMarked
package runthrough.guide;

import org.jspecify.annotations.NullMarked;
