package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.fuzz.StrangeText;

/** Whatever a user writes, reading it ends with a scenario or with problems, never with an exception. */
class AnyTextTest {

    private static final int TEXTS = 100;
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

    @TempDir
    private Path folder = Path.of(".");

    private void read(String text, long seed) throws IOException {
        Path file = Files.writeString(folder.resolve("any.yaml"), text);
        assertThatCode(() -> ScenarioFile.open(file).read())
                .as("seed %d%n%s", seed, text)
                .doesNotThrowAnyException();
    }

    private static String any(List<String> texts, Random random) {
        return texts.get(random.nextInt(texts.size()));
    }

    private static String shipped(Random random) throws IOException {
        var files = ShippedScenariosTest.shipped();
        return Files.readString(files.get(random.nextInt(files.size())));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void textWithPiecesPutInAndTakenOut(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < TEXTS; i++) {
            StringBuilder text = new StringBuilder(shipped(random));
            int slips = 1 + random.nextInt(4);
            for (int slip = 0; slip < slips; slip++) {
                int from = random.nextInt(text.length());
                int to = Math.min(text.length(), from + random.nextInt(6));
                text.replace(from, to, any(StrangeText.SIGNS, random));
            }
            read(text.toString(), seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void numbersOfAnySizeInAnyPlace(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < TEXTS; i++) {
            Matcher numbers = NUMBER.matcher(shipped(random));
            read(
                    numbers.replaceAll(
                            found -> random.nextInt(8) == 0 ? any(StrangeText.NUMBERS, random) : found.group()),
                    seed);
        }
    }
}
