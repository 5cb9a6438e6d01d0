package runthrough.simulation.random;

/**
 * The counter-based random number generator Philox4x32-10: four words of 32 bits that are a function of a key (the seed) and a
 * counter of four words (what the number is for), and of nothing else. It has no state, so that any thread may ask for any number
 * in any order.
 *
 * <p>Source: J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, "Parallel Random Numbers: As Easy as 1, 2, 3", Proceedings of
 * SC11, 2011, section 3.3; its multipliers and key increments.
 *
 * <p>Rule RANDOM-2.
 */
final class Philox {
    private static final int ROUNDS = 10;
    private static final long MULTIPLIER_0 = 0xD2511F53L;
    private static final long MULTIPLIER_1 = 0xCD9E8D57L;
    private static final int KEY_STEP_0 = 0x9E3779B9;
    private static final int KEY_STEP_1 = 0xBB67AE85;
    private static final long LOW_WORD = 0xFFFFFFFFL;

    private final int key0;
    private final int key1;

    /** The generator of {@code seed}: its low word is the first word of the key, its high word the second. */
    Philox(long seed) {
        key0 = (int) seed;
        key1 = (int) (seed >>> 32);
    }

    /**
     * A number in (0, 1) from the first two words of a counter's block: the middle of one of 2^52 equal intervals, so that neither
     * end is ever met.
     */
    double uniform(int counter0, int counter1, int counter2, int counter3) {
        return ((firstWords(counter0, counter1, counter2, counter3) >>> 12) + 0.5) * 0x1p-52;
    }

    /** The first two words of a counter's block, the first in the upper half. */
    long firstWords(int counter0, int counter1, int counter2, int counter3) {
        return words(counter0, counter1, counter2, counter3, true);
    }

    /** The last two words, which no number needs. */
    long lastWords(int counter0, int counter1, int counter2, int counter3) {
        return words(counter0, counter1, counter2, counter3, false);
    }

    private long words(int counter0, int counter1, int counter2, int counter3, boolean first) {
        int c0 = counter0;
        int c1 = counter1;
        int c2 = counter2;
        int c3 = counter3;
        int k0 = key0;
        int k1 = key1;
        for (int round = 0; round < ROUNDS; round++) {
            long product0 = MULTIPLIER_0 * (c0 & LOW_WORD);
            long product1 = MULTIPLIER_1 * (c2 & LOW_WORD);
            c0 = (int) (product1 >>> 32) ^ c1 ^ k0;
            c1 = (int) product1;
            c2 = (int) (product0 >>> 32) ^ c3 ^ k1;
            c3 = (int) product0;
            k0 += KEY_STEP_0;
            k1 += KEY_STEP_1;
        }
        return first ? joined(c0, c1) : joined(c2, c3);
    }

    private static long joined(int upper, int lower) {
        return ((long) upper << 32) | (lower & LOW_WORD);
    }
}
