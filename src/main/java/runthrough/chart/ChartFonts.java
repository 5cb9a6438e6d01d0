package runthrough.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.concurrent.CancellationException;

/**
 * The one font of all charts and reports, DejaVu Sans. The whole font measures text here; a small part of it, without hints
 * and kerning so that its widths are those measured here, travels inside the report.
 */
public final class ChartFonts {
    /** How a style sheet names the font, with what to fall back on for a picture that is opened on its own. */
    public static final String CSS_FAMILY = "'DejaVu Sans',Verdana,sans-serif";

    private static final String SYSTEM_FONTS = "sun.awt.fontconfig";

    private final Font regular;
    private final Font bold;

    private ChartFonts(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /** Reads the bundled fonts; nothing is taken from the machine. */
    public static ChartFonts load() {
        doWithoutSystemFonts();
        return new ChartFonts(
                font("DejaVuSans.ttf"), font("DejaVuSans-Bold.ttf").deriveFont(Font.BOLD));
    }

    /** The regular font at {@code size} (px). */
    public Font regular(float size) {
        return regular.deriveFont(size);
    }

    /** The bold font at {@code size} (px). */
    public Font bold(float size) {
        return bold.deriveFont(size);
    }

    /** The regular font's part for documents, as WOFF2 in Base64. */
    public static String regularForWeb() {
        return Base64.getEncoder().encodeToString(bytes("DejaVuSans.subset.woff2"));
    }

    /** The bold font's part for documents, as WOFF2 in Base64. */
    public static String boldForWeb() {
        return Base64.getEncoder().encodeToString(bytes("DejaVuSans-Bold.subset.woff2"));
    }

    /** The file of the regular font, whole. */
    public static InputStream regularFile() {
        return open("DejaVuSans.ttf");
    }

    /** The file of the bold font, whole. */
    public static InputStream boldFile() {
        return open("DejaVuSans-Bold.ttf");
    }

    /**
     * Keeps Java from asking the system for its fonts, which fails on a machine without fonts or fontconfig, even for a font
     * of our own. Java reads the property once, when it first handles a font.
     */
    private static synchronized void doWithoutSystemFonts() {
        if (System.getProperty(SYSTEM_FONTS) != null) {
            return;
        }
        try {
            Path file = Files.createTempFile("runthrough-fonts", ".properties");
            file.toFile().deleteOnExit();
            Files.writeString(file, "version=1\nsequence.allfonts=default\n");
            System.setProperty(SYSTEM_FONTS, file.toString());
        } catch (IOException e) {
            throw failure(e);
        }
    }

    /** An interrupt closes the file that is read or written just then. */
    private static RuntimeException failure(IOException cause) {
        return cause instanceof ClosedByInterruptException
                ? new CancellationException("given up while fonts were made ready")
                : new TemporaryFolderException(cause);
    }

    private static Font font(String name) {
        try (InputStream in = open(name)) {
            // Java copies it into the folder for temporary files.
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw failure(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("bundled font " + name, e);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("bundled font " + name, e);
        }
    }

    private static InputStream open(String name) {
        InputStream in = ChartFonts.class.getResourceAsStream("fonts/" + name);
        if (in == null) {
            throw new IllegalStateException("bundled font " + name + " is missing");
        }
        return in;
    }
}
