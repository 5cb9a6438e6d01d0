package runthrough.simulation.random;

import java.util.Optional;

/**
 * Random numbers by coil change, for comparing runs in which different things happen. In a plain run a source of
 * randomness gives its numbers in turn: once a joint is rejected in one of two runs, its work done again takes a number more,
 * and from there on all later coil changes of the two meet different random numbers. Here each coil change has numbers of its own, see
 * {@link DrawsByChange}, so that they do not. Where nothing is ever left out or done again it is the same random numbers as in a plain
 * run. Process downtimes take their numbers in turn, for they belong to no coil change.
 *
 * @param index of the replication whose random numbers it is, {@code >= 0}
 * @param exchanged a source that meets the random numbers of another replication instead
 */
public record RandomNumbers(int index, Optional<Exchanged> exchanged) {

    /**
     * A source with other random numbers than the rest.
     *
     * @param source which
     * @param index of the replication whose random numbers it meets, {@code >= 0}
     */
    public record Exchanged(RandomSource source, int index) {}

    /** The random numbers of replication {@code index}, from 0. */
    public static RandomNumbers of(int index) {
        return new RandomNumbers(index, Optional.empty());
    }

    /** The same but for {@code source}, which meets the random numbers of replication {@code other}. */
    public RandomNumbers exchanging(RandomSource source, int other) {
        return new RandomNumbers(index, Optional.of(new Exchanged(source, other)));
    }
}
