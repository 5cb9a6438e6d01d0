package runthrough.simulation.random;

import umontreal.ssj.rng.RandomStream;

/**
 * Random numbers for what is calculated beside the simulation, such as a bootstrap. Each number of a stream leads to a stream of
 * its own, far from those of any run of the simulation. Not safe for use by several threads.
 */
public final class Draws {
    /** Beyond the sources of any line. */
    private static final int FIRST_SOURCE = 1 << 28;

    private final RandomStream stream;

    /**
     * The stream of this {@code seed} and {@code number}, for {@code repetition} of what is repeated with fresh random numbers.
     *
     * @param number which of the streams, from 0 to 2^28
     * @param repetition from 0
     */
    public Draws(long seed, int number, int repetition) {
        stream = new Streams(seed, repetition).stream(FIRST_SOURCE + number);
    }

    /** The next number, between 0 and 1, both excluded. */
    public double next() {
        return stream.nextDouble();
    }

    /** One of the whole numbers from 0 to {@code bound - 1}, each as likely as the other. */
    public int below(int bound) {
        return (int) (stream.nextDouble() * bound);
    }
}
