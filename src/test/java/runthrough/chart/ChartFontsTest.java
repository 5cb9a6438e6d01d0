package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.folder.TemporaryFolder;

class ChartFontsTest {
    private static final String FONTCONFIG = "sun.awt.fontconfig";

    private static final String TEXT = "what has come in, EUR";

    /** Java keeps some twenty files of fonts open. */
    private static final int MANY = 60;

    /** Systems clear their temporary folders, wholly or in part, and Java goes on with what it knows of a font. */
    @ParameterizedTest
    @ValueSource(strings = {"", "DejaVuSans.ttf"})
    void lettersHaveTheirWidth_alsoWhenTheFolderOfTheFontsWasCleared(String cleared) {
        float size = 12.53f + cleared.length();
        width(ChartFonts.load().regular(size), "a few letters");
        for (int font = 1; font <= MANY; font++) {
            width(ChartFonts.load().regular(size + font), "others");
        }

        TemporaryFolder.delete(Path.of(System.getProperty("sun.awt.fontconfig")).resolveSibling(""));

        Font known = ChartFonts.load().regular(size);
        Font unknown = ChartFonts.load().regular(Math.nextUp(size));
        assertThat(width(known, TEXT)).isGreaterThan(100).isCloseTo(width(unknown, TEXT), within(1));
    }

    /** Who starts the program may name a file of his own, and what lies beside it is his. */
    @Test
    void aFolderOfTheUserIsLeftAlone(@TempDir Path folder) throws IOException {
        String ours = System.getProperty(FONTCONFIG, "");
        Path file = Files.createFile(folder.resolve("fontconfig.properties"));
        Path beside = Files.createFile(folder.resolve("beside"));
        try {
            System.setProperty(FONTCONFIG, file.toString());

            ChartFonts.load();

            try (Stream<Path> left = Files.list(folder)) {
                assertThat(left).containsExactlyInAnyOrder(file, beside);
            }
        } finally {
            // What other tests have read goes on from there.
            if (!ours.isEmpty()) {
                System.setProperty(FONTCONFIG, ours);
            }
        }
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
