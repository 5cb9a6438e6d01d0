/** Event-driven simulation. */
@NullMarked
package runthrough.simulation;

import org.jspecify.annotations.NullMarked;
