package runthrough.report.document;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import runthrough.chart.Chart;
import runthrough.chart.ChartFonts;
import runthrough.report.write.Beside;

/** The files of a document: for a screen, for paper, and its picture alone for a slide. */
public final class DocumentFiles {
    /** For a screen. */
    public static final String HTML = "document.html";
    /** For paper. */
    public static final String PDF = "document.pdf";
    /** The picture of the answer, vectors. */
    public static final String SLIDE_SVG = "summary.svg";
    /** The picture of the answer, pixels. */
    public static final String SLIDE_PNG = "summary.png";

    private DocumentFiles() {}

    /**
     * The contents of every file by its name; the same bytes for the same document.
     *
     * @param program name and version of the program
     */
    public static Map<String, byte[]> of(Document document, Paper paper, String program) {
        // Beside the pages, which take long.
        Beside<Map<String, byte[]>> forScreens = Beside.begin(() -> forScreens(document));
        byte[] pages = DocumentPdf.render(document, paper, program);
        Map<String, byte[]> files = forScreens.result();
        files.put(PDF, pages);
        return files;
    }

    /** The letters of {@code document} that the font of its pages and pictures lacks, each once: # stands for them on paper. */
    public static List<String> lettersWithoutShape(Document document) {
        return ChartFonts.load().lettersWithoutShape(DocumentHtml.render(document, Edition.SCREEN));
    }

    private static Map<String, byte[]> forScreens(Document document) {
        Map<String, byte[]> files = slide(document);
        files.put(HTML, utf8(DocumentHtml.render(document, Edition.SCREEN)));
        return files;
    }

    /** The picture of the answer alone. */
    static Map<String, byte[]> slide(Document document) {
        Map<String, byte[]> files = new TreeMap<>();
        files.put(SLIDE_SVG, utf8(document.slide().svg() + "\n"));
        files.put(SLIDE_PNG, png(document.slide()));
        return files;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] png(Chart chart) {
        BufferedImage pixels = chart.picture().pixels(1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream memory = new MemoryCacheImageOutputStream(out)) {
            // Not through a file, which a program that is killed would leave behind.
            ImageIO.write(pixels, "png", memory);
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes any picture", e);
        }
        return out.toByteArray();
    }
}
