/**
 * Random numbers, and what is drawn with them: times, rows of a time study, coils.
 *
 * <p>Main types: {@link runthrough.simulation.random.RandomSource} is what is random in a line; {@link
 * runthrough.simulation.random.RandomNumbers} are the numbers that a run meets; {@link runthrough.simulation.random.DrawTable}
 * writes them out; {@link runthrough.simulation.random.Draws} are for what is calculated beside the simulation. Behind them
 * {@code Streams} makes the streams, {@code Sampler}, {@code RowDraws} and {@code CoilFeed} draw from them.
 *
 * <p>Each source of randomness has a stream of its own in each replication, numbered for good, and a draw takes one uniform
 * number: two lines run under the same seed see the same random numbers.
 */
@NullMarked
package runthrough.simulation.random;

import org.jspecify.annotations.NullMarked;
