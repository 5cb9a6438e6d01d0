package runthrough.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import runthrough.folder.TemporaryFolder;
import runthrough.folder.TemporaryFolderException;

/**
 * The one font of all charts and reports, DejaVu Sans. The whole font measures text here; a small part of it, without hints
 * and kerning so that its widths are those measured here, travels inside the report.
 */
public final class ChartFonts {
    /** How a style sheet names the font, with what to fall back on for a picture that is opened on its own. */
    public static final String CSS_FAMILY = "'DejaVu Sans',Verdana,sans-serif";

    private static final String REGULAR = "DejaVuSans.ttf";
    private static final String BOLD = "DejaVuSans-Bold.ttf";
    private static final String NAME = "runthrough-fonts";

    /** The property that holds the folder that was made, under a name that nobody gives who starts the program. */
    private static final String MADE = NAME + "-" + ProcessHandle.current().pid() + "-" + System.nanoTime();

    private static final String SYSTEM_FONTS = "sun.awt.fontconfig";

    private final Font regular;
    private final Font bold;

    private ChartFonts(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /** Reads the bundled fonts; nothing is taken from the machine. */
    public static ChartFonts load() {
        Path folder = files();
        return new ChartFonts(
                font(folder.resolve(REGULAR)), font(folder.resolve(BOLD)).deriveFont(Font.BOLD));
    }

    /** The regular font at {@code size} (px). */
    public Font regular(float size) {
        return regular.deriveFont(size);
    }

    /** The bold font at {@code size} (px). */
    public Font bold(float size) {
        return bold.deriveFont(size);
    }

    /** The letters of {@code text} that the font has no shape for, each once, in the order of the text; layout is none. */
    public List<String> lettersWithoutShape(String text) {
        return text.codePoints()
                .distinct()
                .filter(letter -> !Character.isISOControl(letter) && !regular.canDisplay(letter))
                .mapToObj(Character::toString)
                .toList();
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
        return open(REGULAR);
    }

    /** The file of the bold font, whole. */
    public static InputStream boldFile() {
        return open(BOLD);
    }

    /**
     * The folder in which the fonts lie as files, for Java reads them from nothing else, and what it is given in any other way it
     * copies, and leaves behind when it is killed. The folder stays to the end of the program. When it is gone, it is made again in its
     * place: what Java keeps of a font, it reads on from there, and takes a letter that it cannot read for one without a width.
     *
     * <p>Beside them lies what keeps Java from asking the system for its fonts, which fails on a machine without fonts or
     * fontconfig, even for a font of our own. Java reads that property once, when it first handles a font.
     */
    private static synchronized Path files() {
        Optional<Path> earlier = Optional.ofNullable(System.getProperty(MADE)).map(Path::of);
        if (earlier.isPresent()
                && Stream.of(REGULAR, BOLD)
                        .allMatch(font -> Files.exists(earlier.get().resolve(font)))) {
            return earlier.get();
        }
        TemporaryFolder made = earlier.map(TemporaryFolder::again).orElseGet(() -> TemporaryFolder.named(NAME));
        try {
            Path none = made.path().resolve("fontconfig.properties");
            Files.writeString(none, "version=1\nsequence.allfonts=default\n");
            Path regular = copied(REGULAR, made.path());
            Path bold = copied(BOLD, made.path());
            made.stayToTheEnd(none, regular, bold);
            System.setProperty(SYSTEM_FONTS, none.toString());
            System.setProperty(MADE, made.path().toString());
            return made.path();
        } catch (IOException e) {
            made.close();
            throw failure(e);
        }
    }

    private static Path copied(String name, Path folder) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = open(name)) {
            Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
        }
        return file;
    }

    /** An interrupt closes the file that is read or written just then. */
    private static RuntimeException failure(IOException cause) {
        return cause instanceof ClosedByInterruptException
                ? new CancellationException("given up while fonts were made ready")
                : new TemporaryFolderException(cause);
    }

    private static Font font(Path file) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, file.toFile());
        } catch (IOException e) {
            throw failure(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("bundled font " + file, e);
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
