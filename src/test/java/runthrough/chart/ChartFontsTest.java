package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.OwnProcess;
import runthrough.folder.TemporaryFolder;

/** In processes of their own, for what is done to the fonts of a process stays done. */
class ChartFontsTest {
    private static final String FONTCONFIG = "sun.awt.fontconfig";

    /** Systems clear their temporary folders, wholly or in part, and Java goes on with what it knows of a font. */
    @ParameterizedTest
    @ValueSource(strings = {"", "DejaVuSans.ttf"})
    void lettersHaveTheirWidth_alsoWhenTheFolderOfTheFontsWasCleared(String cleared) throws Exception {
        List<Double> widths = Stream.of(out(List.of(), cleared).split(" "))
                .map(Double::valueOf)
                .toList();

        assertThat(widths).hasSize(2);
        assertThat(widths.get(0)).isGreaterThan(100).isCloseTo(widths.get(1), within(1.0));
    }

    /** Who starts the program may name a file of his own, and what lies beside it is his. */
    @Test
    void aFolderOfTheUserIsLeftAlone(@TempDir Path parent) throws Exception {
        Path folder = Files.createDirectory(parent.resolve("runthrough-fonts1"));
        Path file = Files.createFile(folder.resolve("fontconfig.properties"));
        Path beside = Files.createFile(folder.resolve("beside"));

        out(List.of("-D" + FONTCONFIG + "=" + file), "DejaVuSans.ttf");

        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactlyInAnyOrder(file, beside);
        }
    }

    private static String out(List<String> options, String cleared) throws IOException, InterruptedException {
        ProcessBuilder program = OwnProcess.of(Cleared.class, List.of(cleared));
        program.command().add(1, "-Djava.awt.headless=true");
        program.command().addAll(1, options);
        Process process = program.redirectErrorStream(true).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(out).isZero();
        return out;
    }

    /** Prints the width of a text in a font of which some letters were read before all was cleared, and in one that was not known. */
    static final class Cleared {
        private static final String TEXT = "what has come in, EUR";
        private static final float SIZE = 12.5f;

        /** Java keeps some twenty files of fonts open. */
        private static final int MANY = 60;

        private Cleared() {}

        public static void main(String[] args) {
            width(ChartFonts.load().regular(SIZE), "a few letters");
            for (int font = 1; font <= MANY; font++) {
                width(ChartFonts.load().regular(SIZE + font), "others");
            }
            TemporaryFolder.delete(Path.of(System.getProperty(FONTCONFIG)).resolveSibling(args[0]));
            int known = width(ChartFonts.load().regular(SIZE), TEXT);
            int unknown = width(ChartFonts.load().regular(Math.nextUp(SIZE)), TEXT);
            System.out.print(known + " " + unknown);
        }

        private static int width(Font font, String text) {
            Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            try {
                return graphics.getFontMetrics(font).stringWidth(text);
            } finally {
                graphics.dispose();
            }
        }
    }
}
