package runthrough.simulation;

import umontreal.ssj.rng.MRG32k3a;
import umontreal.ssj.util.ArithmeticMod;

/**
 * Random streams of MRG32k3a, one for each source of randomness and replication.
 *
 * <p>Source {@code i} starts {@code i 2^127} steps from the seed's state, replication {@code j} another {@code j 2^76} on,
 * as in L'Ecuyer, Simard, Chen and Kelton, "An object-oriented random-number package with many long streams and
 * substreams", Operations Research 50(6), 2002. A source keeps its number when others come or go, so that variants of a
 * line compared under the same seed see the same luck. The seed is spread over the generator's six numbers by the SplitMix64
 * mixer (Steele, Lea, Flood, OOPSLA 2014; constants from memory); seed 0 is the generator's published default state.
 */
final class Streams {
    private static final double M1 = 4294967087.0;
    private static final double M2 = 4294944443.0;
    private static final long DEFAULT_STATE = 12345;
    private static final int STREAM_LOG = 127;
    private static final int REPLICATION_LOG = 76;
    private static final double[][] STEP1 = {{0, 1, 0}, {0, 0, 1}, {-810728, 1403580, 0}};
    private static final double[][] STEP2 = {{0, 1, 0}, {0, 0, 1}, {-1370589, 0, 527612}};

    private final double[][] replication1;
    private final double[][] replication2;
    private final double[] start1;
    private final double[] start2;

    /** Streams of {@code seed} for replication {@code index}, from 0. */
    Streams(long seed, int index) {
        start1 = new double[3];
        start2 = new double[3];
        spread(seed);
        replication1 = jump(STEP1, REPLICATION_LOG, index, M1);
        replication2 = jump(STEP2, REPLICATION_LOG, index, M2);
    }

    /** The stream of source {@code number}, {@code >= 0}. */
    MRG32k3a stream(int number) {
        double[] state1 = times(replication1, times(jump(STEP1, STREAM_LOG, number, M1), start1, M1), M1);
        double[] state2 = times(replication2, times(jump(STEP2, STREAM_LOG, number, M2), start2, M2), M2);
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

    /** The matrix of {@code times 2^log} steps. */
    private static double[][] jump(double[][] step, int log, int times, double modulus) {
        double[][] far = new double[3][3];
        ArithmeticMod.matTwoPowModM(step, far, modulus, log);
        double[][] result = new double[3][3];
        ArithmeticMod.matPowModM(far, result, modulus, times);
        return result;
    }

    private static double[] times(double[][] matrix, double[] state, double modulus) {
        double[] result = new double[3];
        ArithmeticMod.matVecModM(matrix, state, result, modulus);
        return result;
    }
}
