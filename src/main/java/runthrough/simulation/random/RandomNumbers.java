package runthrough.simulation.random;

import java.util.Optional;

/**
 * The random numbers that one replication meets. They belong to what they are for: each is a function of seed, source, replication,
 * index and repeat, see {@link SourceNumbers}. Two variants of a line under one seed therefore differ by nothing but themselves.
 *
 * <p>Rule RANDOM-5.
 *
 * @param seed of the run; any number, its 64 bits are the key of the random numbers
 * @param replication {@code >= 0}
 * @param exchanged a source that meets the random numbers of another replication instead
 */
public record RandomNumbers(long seed, int replication, Optional<Exchanged> exchanged) {

    /**
     * A source with other random numbers than the rest.
     *
     * @param source name of it, see {@link RandomSource#name()}
     * @param replication whose random numbers it meets, from 0
     */
    public record Exchanged(String source, int replication) {
        public Exchanged {
            checkReplication(replication);
        }
    }

    public RandomNumbers {
        checkReplication(replication);
    }

    private static void checkReplication(int replication) {
        if (replication < 0) {
            throw new IllegalArgumentException("replication = " + replication + "; must be 0 or more");
        }
    }

    /** The random numbers of a replication, from 0, under {@code seed}. */
    public RandomNumbers(long seed, int replication) {
        this(seed, replication, Optional.empty());
    }

    /** The same but for {@code source}, which meets the random numbers of replication {@code other}. */
    public RandomNumbers exchanging(RandomSource source, int other) {
        return new RandomNumbers(seed, replication, Optional.of(new Exchanged(source.name(), other)));
    }

    /** Those of the source called {@code name}, see {@link SourceNames}. */
    public SourceNumbers source(String name) {
        int from = exchanged
                .filter(other -> other.source().equals(name))
                .map(Exchanged::replication)
                .orElse(replication);
        return new SourceNumbers(name, new Philox(seed), from);
    }
}
