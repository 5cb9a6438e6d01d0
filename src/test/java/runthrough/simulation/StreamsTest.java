package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.Topic.RANDOM_NUMBERS;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.report.validation.Reference;
import umontreal.ssj.rng.MRG32k3a;
import umontreal.ssj.util.ArithmeticMod;

/**
 * The random streams against P. L'Ecuyer, R. Simard, E. J. Chen, W. D. Kelton, "An object-oriented random-number package with
 * many long streams and substreams", Operations Research 50(6), 2002, and the reference output of the authors' package (file
 * test2RngStream.res). Seed 0 is the published default state, source i the published stream i + 1.
 */
@RecordsChecks
class StreamsTest {
    /** Thirteen digits are printed, or more. */
    private static final double PRINTED = 1e-13;

    private static MRG32k3a published(int stream) {
        return new Streams(0, 0).stream(stream - 1);
    }

    private static String state(MRG32k3a stream) {
        return LongStream.of(stream.getState()).mapToObj(Long::toString).collect(Collectors.joining(", "));
    }

    private static void check(CheckBook book, String id, Reference source, double[] expected, MRG32k3a stream) {
        for (int i = 0; i < expected.length; i++) {
            book.check(RANDOM_NUMBERS, id, "number " + (i + 1))
                    .source(source)
                    .expected(expected[i])
                    .within(PRINTED, "digits printed")
                    .got(stream.nextDouble());
        }
    }

    @Test
    void firstFiveNumbersOfStream1(CheckBook book) {
        double[] expected = {
            0.1270111220465771, 0.3185275653967945, 0.3091860155832701, 0.8258468629271135, 0.2216299157820229
        };
        check(book, "R1", Sources.MRG32K3A, expected, published(1));
    }

    @Test
    void startsOfStreams2And3(CheckBook book) {
        book.check(RANDOM_NUMBERS, "R2", "start of stream 2")
                .source(Sources.RNG_STREAMS)
                .same("3692455944, 1366884236, 2968912127, 335948734, 4161675175, 475798818", state(published(2)));
        book.check(RANDOM_NUMBERS, "R3", "start of stream 3")
                .source(Sources.RNG_STREAMS)
                .same("1015873554, 1310354410, 2249465273, 994084013, 2912484720, 3876682925", state(published(3)));
    }

    @Test
    void stateAndNextNumberOfStream1After35Draws(CheckBook book) {
        MRG32k3a stream = published(1);
        int sum = 0;
        for (int i = 0; i < 35; i++) {
            sum += 1 + (int) (10 * stream.nextDouble());
        }

        book.check(RANDOM_NUMBERS, "R7", "sum of 35 whole numbers from 1 to 10")
                .source(Sources.RNG_STREAMS)
                .expected(186)
                .exactly()
                .got(sum);
        book.check(RANDOM_NUMBERS, "R4", "state of stream 1 after 35 draws")
                .source(Sources.RNG_STREAMS)
                .same("1040577685, 3747037609, 277208355, 1712706441, 627445683, 2408037141", state(stream));
        book.check(RANDOM_NUMBERS, "R5", "next number of stream 1")
                .source(Sources.RNG_STREAMS)
                .expected(0.07941673614985)
                .within(PRINTED, "digits printed")
                .got(stream.nextDouble());
    }

    @Test
    void firstFiveNumbersOfStream3(CheckBook book) {
        double[] expected = {0.7285097861965, 0.9655872822837, 0.9961841304801, 0.1149884161813, 0.9731454191297};
        check(book, "R6", Sources.RNG_STREAMS, expected, published(3));
    }

    @Test
    void replicationsStartWhereTheLibrarySubstreamsDo() {
        // Rule RANDOM-2.
        // SSJ's own substreams lie 2^76 steps apart too.
        MRG32k3a substreams = published(2);
        for (int replication = 1; replication <= 5; replication++) {
            substreams.resetNextSubstream();

            assertThat(new Streams(0, replication).stream(1).getState()).containsExactly(substreams.getState());
        }
    }

    @Test
    void everySourceReplicationAndSeedHasItsOwnNumbers() {
        Set<Double> seen = new HashSet<>();
        for (long seed = -2; seed <= 4; seed++) {
            for (int replication = 0; replication < 20; replication++) {
                Streams streams = new Streams(seed, replication);
                for (int source = 0; source < 40; source++) {
                    seen.add(streams.stream(source).nextDouble());
                }
            }
        }

        // A number has 32 bits: among 5600 some 0.004 pairs are alike by chance.
        assertThat(seen).hasSize(7 * 20 * 40);
    }

    @Test
    void sourcesDoNotShareAStream() {
        // Rule RANDOM-3.
        Set<Integer> numbers = new HashSet<>(Set.of(
                Source.COIL_CHOICE,
                Source.COIL_SIZE,
                Source.REJECT,
                Source.RESTART_DELAY,
                Source.OWN_RUNNING,
                Source.OWN_STANDING));
        for (WorkRecord.WorkList list : WorkRecord.WorkList.values()) {
            for (int element = 0; element < 50; element++) {
                numbers.add(Source.duration(list, element));
                numbers.add(Source.chance(list, element));
            }
        }
        for (int rows = 0; rows < 50; rows++) {
            numbers.add(Source.rows(rows));
            numbers.add(Source.rowsAgain(rows));
        }

        assertThat(numbers).hasSize(6 + 3 * 50 * 2 + 2 * 50).allMatch(number -> number >= 0);
    }

    /** Whoever exchanges the random numbers of measured rows exchanges that of the joints made again with them, and nothing else. */
    @Test
    void rowsOfJointsMadeAgainGoWithTheOthers() {
        for (int rows = 0; rows < 5; rows++) {
            assertThat(Source.owner(Source.rowsAgain(rows))).isEqualTo(Source.rows(rows));
            assertThat(Source.owner(Source.rows(rows))).isEqualTo(Source.rows(rows));
        }
        for (int number : new int[] {Source.COIL_SIZE, Source.REJECT, Source.duration(WorkRecord.WorkList.JOIN, 3)}) {
            assertThat(Source.owner(number)).isEqualTo(number);
        }
    }

    /** Pinned only against change: published runs were made with these. */
    @Test
    void numbersOfSourcesStay() {
        // Rule RANDOM-3.
        assertThat(Source.duration(WorkRecord.WorkList.PREPARE, 0)).isEqualTo(16);
        assertThat(Source.chance(WorkRecord.WorkList.PREPARE, 0)).isEqualTo(17);
        assertThat(Source.duration(WorkRecord.WorkList.JOIN, 2)).isEqualTo(32);
        assertThat(Source.rows(1)).isEqualTo((1 << 20) + 2);
    }

    /** {@code A^(2^75 + n 2^30) s} modulo m for both parts, by the library's powers of the published matrices. */
    @Test
    void whatIsDoneAgainLiesHalfASubstreamOnAndAChangeApart() {
        // Rule RANDOM-4.
        double[][][] steps = {
            {{0, 1, 0}, {0, 0, 1}, {-810728, 1403580, 0}}, {{0, 1, 0}, {0, 0, 1}, {-1370589, 0, 527612}}
        };
        double[] moduli = {4294967087.0, 4294944443.0};
        for (int change : new int[] {0, 1, 6, 1001}) {
            long[] from = new Streams(5, 3).stream(2).getState();
            long[] expected = new long[6];
            for (int part = 0; part < 2; part++) {
                double[][] jump = new double[3][3];
                double[] state = {from[3 * part], from[3 * part + 1], from[3 * part + 2]};
                ArithmeticMod.matTwoPowModM(steps[part], jump, moduli[part], 75);
                ArithmeticMod.matVecModM(jump, state, state, moduli[part]);
                ArithmeticMod.matTwoPowModM(steps[part], jump, moduli[part], 30);
                for (int i = 0; i < change; i++) {
                    ArithmeticMod.matVecModM(jump, state, state, moduli[part]);
                }
                for (int i = 0; i < 3; i++) {
                    expected[3 * part + i] = (long) state[i];
                }
            }

            assertThat(new Streams(5, 3).repeats(2, change).getState()).containsExactly(expected);
        }
    }

    /** The seed is spread as by the generator that Java calls SplittableRandom (Steele, Lea, Flood, OOPSLA 2014). */
    @Test
    void otherSeedsAreSpreadByAPublishedMixer() {
        // Rule RANDOM-2.
        for (long seed : new long[] {1, 7, -1, 1234567, Long.MIN_VALUE}) {
            SplittableRandom mixer = new SplittableRandom(seed);
            long[] expected = new long[6];
            for (int i = 0; i < 3; i++) {
                expected[i] = 1 + Long.remainderUnsigned(mixer.nextLong(), 4294967086L);
                expected[i + 3] = 1 + Long.remainderUnsigned(mixer.nextLong(), 4294944442L);
            }

            assertThat(new Streams(seed, 0).stream(0).getState()).containsExactly(expected);
        }
    }
}
