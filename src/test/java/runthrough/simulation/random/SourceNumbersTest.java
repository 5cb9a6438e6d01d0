package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The random numbers of a source: functions of what they are for, and otherwise random. */
class SourceNumbersTest {
    private static final int DRAWS = 100_000;

    private static SourceNumbers source(long seed, int replication, String name) {
        return new RandomNumbers(seed, replication).source(name);
    }

    /** The answers computed by another program in another language, src/test/python/random_numbers.py. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    1,                 0, join/weld/time,          1,    0, 0.7080733917677907
                    1,                 0, join/weld/time,          2,    0, 0.059749992478462244
                    1,                 0, join/weld/time,          1,    1, 0.3369336829140822
                    1,                 1, join/weld/time,          1,    0, 0.3621843049250676
                    2,                 0, join/weld/time,          1,    0, 0.07867461535607123
                    1,                 0, join/weld#2/time,        1,    0, 0.7063135788456604
                    -7,                3, reject,                  1000, 2, 0.4958953749242817
                    20260928123456789, 5, prepare/Öffnen/chance,   12,   0, 0.8673687026504918
                    0,                 0, restart,                 0,    0, 0.3880789596404931
                    1,                 0, own-stop/running,        1,    0, 0.3893170856599103
                    """)
    void numbersAreThoseThatAnotherProgramComputes(
            long seed, int replication, String name, int index, int repeat, double expected) {
        // Rules RANDOM-2, RANDOM-3.
        assertThat(source(seed, replication, name).uniform(index, repeat)).isEqualTo(expected);
    }

    /** Published answers of the hash (G. Fowler, L. C. Noll, K.-P. Vo); the last by src/test/python/random_numbers.py. */
    @Test
    void namesAreHashedByFnv1a() {
        // Rule RANDOM-2.
        assertThat(SourceNumbers.fnv1a("")).isEqualTo(0x811C9DC5);
        assertThat(SourceNumbers.fnv1a("a")).isEqualTo(0xE40C292C);
        assertThat(SourceNumbers.fnv1a("foobar")).isEqualTo(0xBF9CF968);
        assertThat(SourceNumbers.fnv1a("prepare/Öffnen/time")).isEqualTo(0x1D16339F);
    }

    @Test
    void theOrderInWhichNumbersAreAskedForIsNothingToThem() {
        // Rule RANDOM-2.
        SourceNumbers numbers = source(5, 2, "reject");
        List<Integer> order = new ArrayList<>(IntStream.range(0, 1000).boxed().toList());
        Map<Integer, Double> risen = new HashMap<>();
        order.forEach(index -> risen.put(index, numbers.uniform(index, index % 3)));
        Collections.shuffle(order, new Random(3));

        for (int index : order) {
            assertThat(numbers.uniform(index, index % 3)).isEqualTo(risen.get(index));
        }
    }

    @Test
    void everySeedReplicationSourceIndexAndRepeatHasItsOwn() {
        Set<Double> seen = new HashSet<>();
        for (long seed : new long[] {-1, 0, 1, 1L << 32}) {
            for (int replication = 0; replication < 10; replication++) {
                for (String name : List.of(SourceNames.REJECT, SourceNames.RESTART, "join/weld/time")) {
                    SourceNumbers numbers = source(seed, replication, name);
                    for (int index = 0; index < 20; index++) {
                        for (int repeat = 0; repeat < 5; repeat++) {
                            seen.add(numbers.uniform(index, repeat));
                        }
                    }
                }
            }
        }

        // A number has 52 bits: that two of 12000 are alike has a chance of 1e-8.
        assertThat(seen).hasSize(4 * 10 * 3 * 20 * 5);
    }

    /** There are 2^52 numbers, from 2^-53 to 1 - 2^-53. */
    @Test
    void numbersLieBetweenZeroAndOne_bothExcluded() {
        // Rule RANDOM-2.
        SourceNumbers numbers = source(11, 0, "reject");
        assertThat(IntStream.rangeClosed(1, DRAWS).mapToDouble(index -> numbers.uniform(index, 0)))
                .allMatch(u -> u >= 0x1p-53 && u <= 1 - 0x1p-53);
    }

    /**
     * Chi-square of 100 classes: 99 degrees of freedom, 0.1 % and 99.9 % quantiles 61.1 and 148.2. Counted over each of what a number
     * is a function of, for a generator that mixes one of its words badly would be uneven along that.
     */
    @Test
    void numbersAreUniform_alongIndexRepeatReplicationAndSeed() {
        SourceNumbers reject = source(20, 0, "reject");
        assertUniform(index -> reject.uniform(index, 0));
        assertUniform(repeat -> reject.uniform(1, repeat));
        assertUniform(replication -> source(20, replication, "reject").uniform(1, 0));
        assertUniform(seed -> source(seed, 0, "reject").uniform(1, 0));
        assertUniform(name -> source(20, 0, "join/element " + name + "/time").uniform(1, 0));
    }

    private static void assertUniform(IntToDoubleFunction number) {
        int classes = 100;
        int[] count = new int[classes];
        for (int i = 0; i < DRAWS; i++) {
            count[(int) (number.applyAsDouble(i) * classes)]++;
        }
        double expected = (double) DRAWS / classes;
        double chiSquare = IntStream.of(count)
                .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                .sum();
        assertThat(chiSquare).isBetween(61.1, 148.2);
    }

    /** Independent numbers: the correlation of n pairs has the standard error 1/sqrt(n), 0.0032. */
    @Test
    void neighboursAreNotCorrelated() {
        SourceNumbers weld = source(20, 0, "join/weld/time");
        assertUncorrelated(i -> weld.uniform(i, 0), i -> weld.uniform(i + 1, 0));
        assertUncorrelated(i -> weld.uniform(i, 0), i -> weld.uniform(i, 1));
        assertUncorrelated(
                i -> weld.uniform(i, 0), i -> source(20, 0, "join/weld#2/time").uniform(i, 0));
        assertUncorrelated(
                i -> weld.uniform(i, 0), i -> source(20, 1, "join/weld/time").uniform(i, 0));
        assertUncorrelated(
                i -> weld.uniform(i, 0), i -> source(21, 0, "join/weld/time").uniform(i, 0));
    }

    private static void assertUncorrelated(IntToDoubleFunction one, IntToDoubleFunction other) {
        double sum = IntStream.range(0, DRAWS)
                .mapToDouble(i -> (one.applyAsDouble(i) - 0.5) * (other.applyAsDouble(i) - 0.5))
                .sum();
        assertThat(12 * sum / DRAWS).isCloseTo(0, within(3.3 / Math.sqrt(DRAWS)));
    }

    @Test
    void whatHasAChanceHappensSoOften_andWhatIsCertainAlwaysOrNever() {
        SourceNumbers numbers = source(9, 0, "reject");
        long happened = IntStream.range(0, 10_000)
                .filter(index -> numbers.happens(0.3, index, 0))
                .count();

        // 3000 with a standard error of 46.
        assertThat((double) happened).isCloseTo(3000, within(3 * 46.0));
        assertThat(IntStream.range(0, 1000)).allMatch(index -> numbers.happens(1, index, 0));
        assertThat(IntStream.range(0, 1000)).noneMatch(index -> numbers.happens(0, index, 0));
        for (int index = 0; index < 1000; index++) {
            assertThat(numbers.happens(0.3, index, 0)).isEqualTo(numbers.uniform(index, 0) < 0.3);
        }
    }

    @Test
    void placesAreEquallyLikely_andOneIsTheOnlyOne() {
        SourceNumbers numbers = source(9, 0, "sheet/a");
        int[] count = new int[4];
        IntStream.range(0, 10_000).forEach(index -> count[numbers.place(4, index, 0)]++);

        // 2500 with a standard error of 43.
        assertThat(IntStream.of(count)).allMatch(n -> Math.abs(n - 2500) < 3 * 43);
        assertThat(IntStream.range(0, 100).map(index -> numbers.place(1, index, 0)))
                .containsOnly(0);
    }
}
