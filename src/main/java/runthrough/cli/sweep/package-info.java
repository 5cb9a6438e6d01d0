/** What the commands of a sweep are given: the file of its cases, its shard, the format of its lines, and what it is known by. */
@NullMarked
package runthrough.cli.sweep;

import org.jspecify.annotations.NullMarked;
