package runthrough.simulation.random;

/**
 * Random numbers for what is calculated beside the simulation, such as a bootstrap, one after the other. They come from the same
 * generator as those of the runs, at places that no run reaches. Not safe for use by several threads.
 */
public final class Draws {
    /** In the place of a run's repeat, which counts from 0. */
    private static final int BESIDE_RUNS = -1;

    private final Philox philox;
    private final int number;
    private final int repetition;
    private int drawn;

    /**
     * The numbers of this {@code seed} and {@code number}, for {@code repetition} of what is repeated with fresh random numbers.
     *
     * @param number which of the sequences, from 0
     * @param repetition from 0
     */
    public Draws(long seed, int number, int repetition) {
        this.philox = new Philox(seed);
        this.number = number;
        this.repetition = repetition;
    }

    /** The next number, between 0 and 1, both excluded. */
    public double next() {
        return philox.uniform(drawn++, BESIDE_RUNS, repetition, number);
    }

    /** One of the whole numbers from 0 to {@code bound - 1}, each as likely as the other. */
    public int below(int bound) {
        return (int) (next() * bound);
    }
}
