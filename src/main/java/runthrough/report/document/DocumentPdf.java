package runthrough.report.document;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import runthrough.chart.Chart;
import runthrough.chart.ChartFonts;
import runthrough.chart.Picture;

/** The document as a tagged PDF: the pages of the template, with every drawing put down as vectors and text. */
final class DocumentPdf {
    private static final String FONT = "DejaVu Sans";
    private static final int BOLD = 700;
    private static final String CONTENTS = "contents";
    /** Below this nobody would read it on paper. */
    private static final double SMALLEST = 0.75;
    /** The page to decide on takes the largest of these at which it is one page, or the smallest. */
    private static final Double[] SUMMARY_SIZES = {1.0, 0.95, 0.9, 0.85, 0.8};

    private DocumentPdf() {}

    /** The whole file; the same bytes for the same document. */
    static byte[] render(Document document, Paper paper, String program) {
        // The library prints what it is doing unless switched off; always set to the same.
        XRLog.setLoggingEnabled(false);
        Map<String, Chart> drawings = document.drawings().collect(Collectors.toMap(Chart::id, Function.identity()));
        Edition edition = Stream.of(SUMMARY_SIZES)
                .map(size -> Edition.on(paper, size))
                .filter(one -> isSummaryOnePage(document, one, drawings, program))
                .findFirst()
                .orElseGet(() -> Edition.on(paper, SMALLEST));
        String html = DocumentHtml.render(document, edition);
        try (PdfBoxRenderer renderer = renderer(html, drawings, program)) {
            renderer.layout();
            return bytes(renderer.createPDFKeepOpen(), html);
        } catch (IOException e) {
            throw new UncheckedIOException("pages of the document", e);
        }
    }

    /** Whether what follows the page to decide on begins on the second page. */
    private static boolean isSummaryOnePage(
            Document document, Edition edition, Map<String, Chart> drawings, String program) {
        String html = DocumentHtml.render(document, edition.withoutChapters());
        try (PdfBoxRenderer renderer = renderer(html, drawings, program)) {
            renderer.layout();
            Box contents = renderer.getSharedContext().getBoxById(CONTENTS);
            return contents.getAbsY()
                    < renderer.getRootBox().getLayer().getPages().get(1).getBottom();
        }
    }

    private static PdfBoxRenderer renderer(String html, Map<String, Chart> drawings, String program) {
        return new PdfRendererBuilder()
                .withHtmlContent(html, null)
                .withProducer(program)
                .usePdfUaAccessibility(true)
                .useObjectDrawerFactory(new Drawings(drawings))
                .useFont(ChartFonts::regularFile, FONT, 400, FontStyle.NORMAL, true)
                .useFont(ChartFonts::boldFile, FONT, BOLD, FontStyle.NORMAL, true)
                .useUnicodeLineBreaker(new WordBreaks())
                .useUriResolver((base, uri) -> uri.startsWith("#") ? uri : null)
                .buildPdfRenderer();
    }

    private static byte[] bytes(PDDocument pdf, String html) throws IOException {
        PDDocumentInformation information = pdf.getDocumentInformation();
        information.setCreationDate(fixed());
        CRC32 content = new CRC32();
        content.update(html.getBytes(StandardCharsets.UTF_8));
        pdf.setDocumentId(content.getValue());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf.save(out);
        return out.toByteArray();
    }

    /** A file needs a date of creation; that of the day would change its bytes. */
    private static Calendar fixed() {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(0);
        return date;
    }

    /** Puts each drawing where the template has its place. */
    private record Drawings(Map<String, Chart> charts) implements FSObjectDrawerFactory, FSObjectDrawer {
        @Override
        public FSObjectDrawer createDrawer(Element element) {
            return this;
        }

        @Override
        public boolean isReplacedObject(Element element) {
            return charts.containsKey(element.getAttribute("data"));
        }

        @Override
        @SuppressWarnings("NullAway") // The library's own interface says that null is no links; it is not annotated.
        public @Nullable Map<Shape, String> drawObject(
                Element element,
                double x,
                double y,
                double width,
                double height,
                OutputDevice device,
                RenderingContext context,
                int dotsPerPixel) {
            Picture picture = charts.get(element.getAttribute("data")).picture();
            float wide = (float) width / dotsPerPixel;
            device.drawWithGraphics((float) x, (float) y, wide, (float) height / dotsPerPixel, graphics -> {
                graphics.scale(wide / picture.width(), wide / picture.width());
                picture.draw(graphics);
            });
            return null;
        }
    }
}
