package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.Topic.RANDOM_NUMBERS;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.apache.commons.rng.core.source32.Philox4x32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

/** The counter-based generator against its published known answers and another implementation. */
@RecordsChecks
class PhiloxTest {

    /**
     * Known answers of the authors' own implementation, Random123, file kat_vectors, rows "philox4x32 10": counter, key, answer.
     * The third row is made of digits of pi.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    R1 | 00000000 00000000 00000000 00000000 | 00000000 00000000 | 6627e8d5 e169c58d bc57ac4c 9b00dbd8
                    R2 | ffffffff ffffffff ffffffff ffffffff | ffffffff ffffffff | 408f276d 41c83b0e a20bc7c6 6d5451fd
                    R3 | 243f6a88 85a308d3 13198a2e 03707344 | a4093822 299f31d0 | d16cfe09 94fdcceb 5001e420 24126ea1
                    """)
    void publishedKnownAnswersAreMet(String id, String counter, String key, String answer, CheckBook book) {
        // Rule RANDOM-2.
        int[] at = words(counter);
        int[] keys = words(key);
        Philox philox = new Philox(((long) keys[1] << 32) | (keys[0] & 0xFFFFFFFFL));
        book.check(RANDOM_NUMBERS, id, "block of counter " + counter + ", key " + key)
                .source(Sources.PHILOX)
                .same(answer, text(block(philox, at[0], at[1], at[2], at[3])));
    }

    /** Apache Commons RNG 1.7, class Philox4x32: its seed is the key and a counter, which it counts up before each block. */
    @Test
    void agreesWithAnotherImplementation_atAThousandRandomKeysAndCounters() {
        SplittableRandom any = new SplittableRandom(20311125);
        for (int i = 0; i < 1000; i++) {
            int[] seed = any.ints(6).toArray();
            Philox4x32 other = new Philox4x32(seed);
            Philox philox = new Philox(((long) seed[1] << 32) | (seed[0] & 0xFFFFFFFFL));
            int carry1 = seed[2] == -1 ? 1 : 0;
            int carry2 = carry1 == 1 && seed[3] == -1 ? 1 : 0;
            int carry3 = carry2 == 1 && seed[4] == -1 ? 1 : 0;
            assertThat(block(philox, seed[2] + 1, seed[3] + carry1, seed[4] + carry2, seed[5] + carry3))
                    .containsExactly(other.nextInt(), other.nextInt(), other.nextInt(), other.nextInt());
        }
    }

    /** Words 0 and 1 of the first known answer: (0x6627e8d5 2^20 + floor(0xe169c58d / 2^12) + 1/2) / 2^52. */
    @Test
    void uniformIsTheMiddleOfOneOf2To52Intervals() {
        assertThat(new Philox(0).uniform(0, 0, 0, 0)).isEqualTo((0x6627e8d5L * 0x1p20 + 0xe169cL + 0.5) / 0x1p52);
    }

    private static int[] block(Philox philox, int c0, int c1, int c2, int c3) {
        long first = philox.firstWords(c0, c1, c2, c3);
        long last = philox.lastWords(c0, c1, c2, c3);
        return new int[] {(int) (first >>> 32), (int) first, (int) (last >>> 32), (int) last};
    }

    private static String text(int[] words) {
        return Arrays.stream(words).mapToObj("%08x"::formatted).collect(Collectors.joining(" "));
    }

    private static int[] words(String text) {
        return Arrays.stream(text.trim().split(" "))
                .mapToInt(word -> Integer.parseUnsignedInt(word, 16))
                .toArray();
    }
}
