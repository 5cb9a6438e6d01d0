package runthrough.report.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import runthrough.chart.Chart;
import runthrough.plant.Alternative;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.quantity.UnitSystem;
import runthrough.report.Figure;
import runthrough.report.Provenance;
import runthrough.report.verdict.Invented;
import runthrough.report.verdict.RunThroughResult;

/** The document that is handed over, on the screen and on paper. */
class DocumentTest {
    private static final String PROGRAM = "Runthrough 0.1.0";
    private static final String HOSTILE = "</title><script>alert('x')</script>\"&\u0001]]>=cmd()";
    private static final Document DOCUMENT = document(Invented.result(Invented.line(Distribution.lognormal(36, 9))));
    private static final byte[] PAGES = DocumentPdf.render(DOCUMENT, Paper.A4, PROGRAM);

    private static Document document(RunThroughResult result) {
        return DocumentMaker.of(
                result, Handover.NONE, List.of(), Optional.empty(), Optional.empty(), Alternative.AS_WRITTEN);
    }

    private static Document hostile() {
        Line line = Invented.line(HOSTILE, HOSTILE, Distribution.lognormal(36, 9), new Reject.Chance(0.1));
        SimulationRequest request = new SimulationRequest(
                HOSTILE, List.of(HOSTILE), line, Invented.request(line).run(), UnitSystem.METRIC);
        return document(RunThroughResult.of(
                Invented.study(request),
                List.of(HOSTILE),
                new Provenance(PROGRAM, Optional.of("a".repeat(64)), Optional.of(HOSTILE))));
    }

    @Test
    void sameDocumentGivesTheSameBytes() {
        Document again = document(Invented.result(Invented.line(Distribution.lognormal(36, 9))));

        Map<String, byte[]> first = DocumentFiles.of(DOCUMENT, Paper.A4, PROGRAM);
        Map<String, byte[]> second = DocumentFiles.of(again, Paper.A4, PROGRAM);

        assertThat(first).hasSize(4);
        first.forEach((name, bytes) -> assertThat(second.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void pagesAreTaggedAndNameTheirLanguageAndTitle() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PAGES)) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo(DOCUMENT.title());
            assertThat(pdf.getDocumentInformation().getProducer()).isEqualTo(PROGRAM);
            assertThat(pdf.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(item -> item.getTitle())
                    .containsExactlyElementsOf(DOCUMENT.contents().stream()
                            .map(Document.Entry::title)
                            .toList());
        }
    }

    @Test
    void everyDrawingOnPaperHasAnAlternativeText() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PAGES)) {
            List<COSDictionary> figures = new ArrayList<>();
            collect(
                    pdf.getDocumentCatalog()
                            .getStructureTreeRoot()
                            .getCOSObject()
                            .getDictionaryObject(COSName.K),
                    figures);
            List<String> expected = DOCUMENT.drawings()
                    .map(chart -> chart.title() + ". " + chart.alternative())
                    .toList();
            assertThat(figures)
                    .extracting(figure -> figure.getString(COSName.ALT))
                    .containsExactlyElementsOf(expected);
        }
    }

    private static void collect(@Nullable COSBase node, List<COSDictionary> figures) {
        if (node instanceof COSObject object) {
            collect(object.getObject(), figures);
        } else if (node instanceof COSArray array) {
            array.forEach(each -> collect(each, figures));
        } else if (node instanceof COSDictionary dictionary) {
            if ("Figure".equals(dictionary.getNameAsString(COSName.S))) {
                figures.add(dictionary);
            } else {
                collect(dictionary.getDictionaryObject(COSName.K), figures);
            }
        }
    }

    @Test
    void everyPageHasItsNumberAndSaysWhereItComesFrom() throws IOException {
        List<String> pages = pages(PAGES);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("page " + (i + 1) + " of " + pages.size())
                    .contains("seed 7")
                    .contains(Invented.FINGERPRINT.substring(0, 12));
        }
    }

    @Test
    void firstPageIsEnoughToDecideOn() throws IOException {
        assertThat(pages(PAGES).get(0))
                .contains(DOCUMENT.title(), DOCUMENT.report().headline().word())
                .contains("Limiting factor: ", "What to change", "What it is worth")
                .contains("coil changes that did not run through")
                .contains("Share of coil changes that run through");
    }

    /** A long title takes room that the rest then does without. */
    @Test
    void summaryIsOnePageThoughItsTitleIsLong() throws IOException {
        Line line = Invented.line(
                "a coil with quite a long name, as order books have it",
                "fit up",
                Distribution.lognormal(36, 9),
                new Reject.Chance(0.1));
        String title = "A tube line, its accumulator and its joiner, before and after the change of speed; ".repeat(6);
        SimulationRequest request = new SimulationRequest(
                title, List.of(), line, Invented.request(line).run(), UnitSystem.METRIC);
        Document document = document(RunThroughResult.of(Invented.study(request), List.of(), Invented.PROVENANCE));

        List<String> pages = pages(DocumentPdf.render(document, Paper.LETTER, PROGRAM));

        assertThat(pages.get(0)).contains("What it is worth", "No values in money were given.");
        assertThat(pages.get(1)).contains("Contents", "How it was computed");
    }

    /** Numbers in the contents are those of the pages on which the chapters begin. */
    @Test
    void contentsNameThePages() throws IOException {
        List<String> pages = pages(PAGES);
        int number = 1;
        for (Document.Entry entry : DOCUMENT.contents()) {
            Matcher listed = Pattern.compile(
                            "(?m)^" + number + "[\\s\u2003]+" + Pattern.quote(entry.title()) + "[ .]*?(\\d+)\\s*$")
                    .matcher(pages.get(1));
            assertThat(listed.find()).as(entry.title() + " in " + pages.get(1)).isTrue();
            assertThat(pages.get(Integer.parseInt(listed.group(1)) - 1))
                    .containsPattern(number + "[\\s\u2003]+" + Pattern.quote(entry.title()));
            number++;
        }
    }

    @Test
    void textOfDrawingsIsText() throws IOException {
        String text = String.join("\n", pages(PAGES));
        assertThat(text).contains("strip drawn, m").contains("joint cycle time, min");
    }

    @Test
    void paperIsThatAskedFor() throws IOException {
        try (PDDocument a4 = Loader.loadPDF(PAGES);
                PDDocument letter = Loader.loadPDF(DocumentPdf.render(DOCUMENT, Paper.LETTER, PROGRAM))) {
            assertSize(a4.getPage(0).getMediaBox(), 595.28, 841.89);
            assertSize(letter.getPage(0).getMediaBox(), 612, 792);
        }
    }

    private static void assertSize(PDRectangle box, double width, double height) {
        assertThat((double) box.getWidth()).isBetween(width - 0.1, width + 0.1);
        assertThat((double) box.getHeight()).isBetween(height - 0.1, height + 0.1);
    }

    @Test
    void textOfTheUserIsTextOnPaperAndOnTheScreen() throws Exception {
        Document document = hostile();
        String html = DocumentHtml.render(document, Edition.SCREEN);
        String shown = HOSTILE.replace('\u0001', '\uFFFD');

        assertThat(html).doesNotContain("<script");
        NodeList titles = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))))
                .getElementsByTagName("h1");
        assertThat(titles.item(0).getTextContent()).isEqualTo(shown);
        String text = String.join("\n", pages(DocumentPdf.render(document, Paper.A4, PROGRAM)));
        assertThat(text).contains("</title><script>alert('x')</script>\"&");
        assertThat(document.slide().svg()).doesNotContain("<script");
    }

    @Test
    void linesWithoutAnAccumulatorHaveADocumentToo() {
        for (Line line : List.of(Invented.rethread(), Invented.withoutAccumulator())) {
            Document document = document(Invented.result(line));
            assertThat(DocumentHtml.render(document, Edition.SCREEN))
                    .contains(document.report().headline().word());
        }
    }

    /**
     * A coil of pi/4 (1.45^2 - 0.508^2)/0.002 - 0.7 = 723.6 m runs for 723.6/0.75 = 964.8 s, and its change loses 73 s of work, half
     * of the ramps 0.75/0.25 and 0.75/0.2 (3.4 s) and so 76.4 s: 7.33 % of a year, and 92.67 % of what 0.75 m/s of 2.0 x 240 mm
     * at 7850 kg/m3 bring (2.826 kg/s).
     */
    @Test
    void whereEveryChangeStopsByDesignTheFirstPageLeadsWithHoursAndTonnesOfAYear() throws IOException {
        RunThroughResult result = Invented.result(Invented.withoutAccumulator());
        double year = result.study().request().run().yearlyTime();
        Document document = document(result);

        List<Figure> figures = document.figures();
        assertThat(figures).extracting(Figure::name).startsWith("lost in a year", "good output in a year");
        assertThat(figures).extracting(Figure::name).doesNotContain("run through");
        assertThat(si(figures.get(0)) / year).isCloseTo(0.0733, within(0.002));
        assertThat(si(figures.get(1)) / year).isCloseTo(0.9267 * 2.826, within(0.01));
        assertThat(pages(DocumentPdf.render(document, Paper.A4, PROGRAM)).get(0))
                .contains("Lost in a year", "Good output in a year", "Coil changes cost")
                .doesNotContain("Share of coil changes that run through");
    }

    private static double si(Figure figure) {
        return figure.value().value().orElseThrow().si();
    }

    @Test
    void slideIsAPictureOfItsOwnInBothForms() {
        Map<String, byte[]> files = DocumentFiles.slide(DOCUMENT);
        Chart slide = DOCUMENT.slide();

        assertThat(16.0 / 9)
                .isEqualTo((double) slide.picture().width() / slide.picture().height());
        assertThat(new String(files.get(DocumentFiles.SLIDE_SVG), StandardCharsets.UTF_8))
                .startsWith("<svg")
                .contains("viewBox=\"0 0 1600 900\"")
                .contains(DOCUMENT.report().headline().word());
        assertThat(files.get(DocumentFiles.SLIDE_PNG)).startsWith(0x89, 'P', 'N', 'G');
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        }
    }

    @Test
    void bothEditionsHaveTheSameChapters() {
        String screen = DocumentHtml.render(DOCUMENT, Edition.SCREEN);
        String paper = DocumentHtml.render(DOCUMENT, Edition.on(Paper.A4, 1));
        Stream.of(screen, paper)
                .forEach(html -> DOCUMENT.contents()
                        .forEach(entry -> assertThat(html).contains("<h2 id=\"" + entry.id() + "\">" + entry.title())));
    }
}
