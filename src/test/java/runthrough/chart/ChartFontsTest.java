package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import runthrough.folder.TemporaryFolder;

class ChartFontsTest {
    private static final String TEXT = "what has come in, EUR";

    /** Java keeps some twenty files of fonts open. */
    private static final int MANY = 60;

    /** Systems clear their temporary folders, and Java goes on with what it knows of a font. */
    @Test
    void lettersHaveTheirWidth_alsoWhenTheFolderOfTheFontsWasCleared() {
        float size = 12.53f;
        width(ChartFonts.load().regular(size), "a few letters");
        for (int font = 1; font <= MANY; font++) {
            width(ChartFonts.load().regular(size + font), "others");
        }

        TemporaryFolder.delete(Path.of(System.getProperty("sun.awt.fontconfig")).resolveSibling(""));

        Font known = ChartFonts.load().regular(size);
        Font unknown = ChartFonts.load().regular(Math.nextUp(size));
        assertThat(width(known, TEXT)).isGreaterThan(100).isCloseTo(width(unknown, TEXT), within(1));
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
