package runthrough.simulation.random;

import org.jspecify.annotations.Nullable;
import umontreal.ssj.rng.MRG32k3a;
import umontreal.ssj.util.ArithmeticMod;

/**
 * Random streams of MRG32k3a, one for each source of randomness and replication.
 *
 * <p>Source {@code i} starts {@code i 2^127} steps from the seed's state, replication {@code j} another {@code j 2^76} on,
 * as in L'Ecuyer, Simard, Chen and Kelton, "An object-oriented random-number package with many long streams and
 * substreams", Operations Research 50(6), 2002. A source keeps its number when others come or go, so that variants of a
 * line compared under the same seed see the same random numbers. The seed is spread over the generator's six numbers by the SplitMix64
 * mixer (Steele, Lea, Flood, OOPSLA 2014; constants from memory); seed 0 is the generator's published default state.
 *
 * <p>With random numbers by coil change, see {@link RandomNumbers}, what is done again at coil change {@code n} takes its numbers {@code 2^75 + n
 * 2^30} steps behind the start of its source's stream, which no other stream reaches.
 *
 * <p>The matrices of the jumps are worked out once for all: making a stream must be cheap beside a short replication.
 *
 * <p>Rule RANDOM-2.
 */
public final class Streams {
    private static final double M1 = 4294967087.0;
    private static final double M2 = 4294944443.0;
    private static final long DEFAULT_STATE = 12345;
    private static final double[][] STEP1 = {{0, 1, 0}, {0, 0, 1}, {-810728, 1403580, 0}};
    private static final double[][] STEP2 = {{0, 1, 0}, {0, 0, 1}, {-1370589, 0, 527612}};
    private static final double[][][] SOURCE1 = jumps(STEP1, 127, M1);
    private static final double[][][] SOURCE2 = jumps(STEP2, 127, M2);
    private static final double[][][] REPEATS1 = jumps(STEP1, 75, M1);
    private static final double[][][] REPEATS2 = jumps(STEP2, 75, M2);
    private static final double[][][] CHANGE1 = jumps(STEP1, 30, M1);
    private static final double[][][] CHANGE2 = jumps(STEP2, 30, M2);
    private static final double[][][] REPLICATION1 = jumps(STEP1, 76, M1);
    private static final double[][][] REPLICATION2 = jumps(STEP2, 76, M2);

    private final double[] start1 = new double[3];
    private final double[] start2 = new double[3];
    private final boolean byChange;
    /** The source that meets other random numbers than the rest. */
    private final int exchanged;

    private final @Nullable Streams others;

    /** Streams of {@code seed} for replication {@code index}, from 0, whose numbers are taken in turn. */
    public Streams(long seed, int index) {
        this(seed, index, false, 0, null);
    }

    /** Streams of {@code seed} whose numbers belong to coil changes. */
    public Streams(long seed, RandomNumbers randomNumbers) {
        this(
                seed,
                randomNumbers.index(),
                true,
                randomNumbers.exchanged().map(other -> other.source().number()).orElse(0),
                randomNumbers
                        .exchanged()
                        .map(other -> new Streams(seed, other.index()))
                        .orElse(null));
    }

    private Streams(long seed, int index, boolean byChange, int exchanged, @Nullable Streams others) {
        this.byChange = byChange;
        this.exchanged = exchanged;
        this.others = others;
        spread(seed);
        advance(start1, REPLICATION1, index, M1);
        advance(start2, REPLICATION2, index, M2);
    }

    /** The stream of source {@code number}, {@code >= 0}. */
    public MRG32k3a stream(int number) {
        Streams from = of(number);
        return from.stream(number, from.start1.clone(), from.start2.clone());
    }

    /** The numbers of source {@code number}, {@code >= 0}: in turn, or by coil change. */
    public SourceDraws draws(int number) {
        return byChange ? new DrawsByChange(this, number) : SourceDraws.inTurn(stream(number));
    }

    /** The numbers of source {@code number} for what is done again at coil change {@code change}, {@code >= 0}. */
    public MRG32k3a repeats(int number, int change) {
        Streams from = of(number);
        double[] state1 = from.start1.clone();
        double[] state2 = from.start2.clone();
        advance(state1, REPEATS1, 1, M1);
        advance(state2, REPEATS2, 1, M2);
        advance(state1, CHANGE1, change, M1);
        advance(state2, CHANGE2, change, M2);
        return from.stream(number, state1, state2);
    }

    private Streams of(int number) {
        return others != null && Source.owner(number) == exchanged ? others : this;
    }

    /** The stream of source {@code number} from the given state of source 0 on. */
    private MRG32k3a stream(int number, double[] state1, double[] state2) {
        advance(state1, SOURCE1, number, M1);
        advance(state2, SOURCE2, number, M2);
        // The constructor takes its state from a shared field, in a race between threads; setSeed replaces it whole.
        MRG32k3a stream = new MRG32k3a();
        stream.setSeed(new long[] {
            (long) state1[0], (long) state1[1], (long) state1[2], (long) state2[0], (long) state2[1], (long) state2[2]
        });
        return stream;
    }

    private void spread(long seed) {
        long mixed = seed;
        for (int i = 0; i < 3; i++) {
            if (seed == 0) {
                start1[i] = DEFAULT_STATE;
                start2[i] = DEFAULT_STATE;
            } else {
                mixed += 0x9E3779B97F4A7C15L;
                start1[i] = 1 + Long.remainderUnsigned(mix(mixed), (long) M1 - 1);
                mixed += 0x9E3779B97F4A7C15L;
                start2[i] = 1 + Long.remainderUnsigned(mix(mixed), (long) M2 - 1);
            }
        }
    }

    private static long mix(long state) {
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** The matrices of {@code 2^log, 2^(log + 1), ...} steps, one for each bit of a positive int. */
    private static double[][][] jumps(double[][] step, int log, double modulus) {
        double[][][] jumps = new double[Integer.SIZE - 1][3][3];
        ArithmeticMod.matTwoPowModM(step, jumps[0], modulus, log);
        for (int bit = 1; bit < jumps.length; bit++) {
            ArithmeticMod.matMatModM(jumps[bit - 1], jumps[bit - 1], jumps[bit], modulus);
        }
        return jumps;
    }

    /** Advances {@code state} by {@code times} the first of the jumps. */
    private static void advance(double[] state, double[][][] jumps, int times, double modulus) {
        for (int bit = 0; times >> bit > 0; bit++) {
            if ((times >> bit & 1) == 1) {
                ArithmeticMod.matVecModM(jumps[bit], state, state, modulus);
            }
        }
    }
}
