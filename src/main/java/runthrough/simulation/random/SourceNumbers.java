package runthrough.simulation.random;

import java.nio.charset.StandardCharsets;

/**
 * The random numbers of one source of randomness in one replication. Each belongs to what it is for: it is a function of index and
 * repeat, without state or order, so that asking for one, or leaving it out, changes no other.
 *
 * <p>Rules RANDOM-2, RANDOM-3, RANDOM-4.
 */
public final class SourceNumbers {
    private static final int FNV_OFFSET = 0x811C9DC5;
    private static final int FNV_PRIME = 0x01000193;

    private final String name;
    private final Philox philox;
    private final int replication;
    private final int nameHash;

    SourceNumbers(String name, Philox philox, int replication) {
        this.name = name;
        this.philox = philox;
        this.replication = replication;
        this.nameHash = fnv1a(name);
    }

    /** Name of the source. */
    public String name() {
        return name;
    }

    /**
     * The number, in (0, 1).
     *
     * @param index what it is for: number of a coil change, a coil or a process downtime
     * @param repeat 0 for the first use at that index, k for the k-th use again
     */
    public double uniform(int index, int repeat) {
        return philox.uniform(index, repeat, replication, nameHash);
    }

    /** Whether what has the chance {@code chance}, in [0, 1], happens; what is certain either way takes no number. */
    public boolean happens(double chance, int index, int repeat) {
        return chance > 0 && (chance >= 1 || uniform(index, repeat) < chance);
    }

    /** One of {@code count} places, from 0, each as likely as the other. */
    public int place(int count, int index, int repeat) {
        return count == 1 ? 0 : (int) (uniform(index, repeat) * count);
    }

    /** FNV-1a with 32 bits, of the name in UTF-8 (Fowler, Noll, Vo). */
    static int fnv1a(String name) {
        int hash = FNV_OFFSET;
        for (byte one : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (one & 0xFF)) * FNV_PRIME;
        }
        return hash;
    }
}
