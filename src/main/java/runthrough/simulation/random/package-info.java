/**
 * Random numbers, and what is drawn with them: times, rows of a time study, coils.
 *
 * <p>Main types: {@link runthrough.simulation.random.RandomNumbers} are the numbers that a replication meets; {@link
 * runthrough.simulation.random.SourceNumbers} those of one source, which {@link runthrough.simulation.random.SourceNames} names;
 * {@link runthrough.simulation.random.RandomSource} is what is random in a line; {@link runthrough.simulation.random.Sampler} and
 * {@link runthrough.simulation.random.CoilFeed} draw; {@link runthrough.simulation.random.DrawTable} writes the draws out; {@link
 * runthrough.simulation.random.Draws} are for what is calculated beside the simulation. Behind them is {@code Philox}.
 *
 * <p>A random number belongs to what it is for: it is a function of seed, source, replication, index and repeat, and of nothing that
 * was drawn before. Two lines run under the same seed differ by nothing but themselves.
 */
@NullMarked
package runthrough.simulation.random;

import org.jspecify.annotations.NullMarked;
