package runthrough.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The shipped inputs, those with slips, and those that failed once: each is used or refused with a message, in time and in bounded
 * memory. {@code mvn -P fuzz test} has a fuzzer make further ones, led by the code that they reach.
 *
 * <p>The first letter of an input says what reads the rest, see {@link HostileInput}.
 */
class HostileInputFuzzTest {
    private static final int MOST_SLIPS = 6;

    private static @Nullable HostileInput reader;

    /**
     * Opened by the first input and not before all of them: the fuzzer rewrites what is loaded already when it begins, and a record of
     * Java 17 does not bear that.
     */
    private static synchronized HostileInput reader() throws IOException {
        if (reader == null) {
            reader = HostileInput.open();
        }
        return reader;
    }

    /** The same inputs on every machine: slips in each kind, as many as take about as long. */
    @ParameterizedTest
    @CsvSource({"S,300", "C,200", "T,200", "L,200", "R,100"})
    void slipsOfASeedAreUsedOrRefused(char kind, int number) throws IOException, InterruptedException {
        Random random = new Random(kind);
        for (int i = 0; i < number; i++) {
            byte[] slips = new byte[1 + Slips.BYTES_OF_ONE * (1 + random.nextInt(MOST_SLIPS))];
            random.nextBytes(slips);
            reader().read(input(kind, slips));
        }
    }

    @AfterAll
    static synchronized void close() {
        if (reader != null) {
            reader.close();
        }
    }

    static Stream<Arguments> shipped() {
        return Shipped.byKind().entrySet().stream()
                .flatMap(kind -> Stream.concat(
                        kind.getValue().stream().map(text -> input(kind.getKey(), text)),
                        IntStream.range(0, kind.getValue().size())
                                .mapToObj(number ->
                                        input(Character.toUpperCase(kind.getKey()), new byte[] {(byte) number}))))
                .map(Arguments::of);
    }

    private static byte[] input(char kind, byte[] rest) {
        byte[] input = new byte[rest.length + 1];
        input[0] = (byte) kind;
        System.arraycopy(rest, 0, input, 1, rest.length);
        return input;
    }

    @MethodSource("shipped")
    @FuzzTest
    void isUsedOrRefusedWithAMessage(byte[] input) throws IOException, InterruptedException {
        reader().read(input);
    }
}
