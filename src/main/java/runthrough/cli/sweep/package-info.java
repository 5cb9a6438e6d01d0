/** What the commands of a sweep are given: the file of its cases, its shard, the format of its lines. */
@NullMarked
package runthrough.cli.sweep;

import org.jspecify.annotations.NullMarked;
