package runthrough.study.sweep;

import java.util.stream.IntStream;

/**
 * The part of a sweep that one machine does: every {@code of}-th case from its own on, so that all parts take about as long.
 *
 * @param number of the part, from 1
 * @param of how many parts there are
 */
public record Shard(int number, int of) {
    /** So many parts there may be. */
    public static final int MOST = 100_000;

    /** All of it. */
    public static final Shard WHOLE = new Shard(1, 1);

    public Shard {
        if (of < 1 || of > MOST || number < 1 || number > of) {
            throw new IllegalArgumentException(number + "/" + of);
        }
    }

    /** Indices, from 0, of the cases of this part, rising. */
    public int[] indices(int cases) {
        return IntStream.iterate(number - 1, index -> index < cases, index -> index + of)
                .toArray();
    }
}
