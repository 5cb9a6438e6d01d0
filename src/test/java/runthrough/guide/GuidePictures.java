package runthrough.guide;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.openqa.selenium.OutputType;
import runthrough.cli.Session;
import runthrough.web.BrowserSession;
import runthrough.web.PageServer;

/**
 * Makes all pictures of the guide anew: {@code mvn -P guide test}. Charts come from the reports that its commands write, the first page
 * from the document, views of the page from a real browser; only the charts have the same bytes on every machine.
 */
final class GuidePictures {
    private static final int DOTS_PER_INCH = 110;
    /** A coil change, in seconds for each element of work; the next one has begun. */
    private static final double[] TAPS = {303, 9.5, 21.4, 26};

    private GuidePictures() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("guide");
        try {
            GuideWalk walk = new GuideWalk(folder);
            walk.walk(Guide.read());
            for (Map.Entry<String, String> drawing : walk.drawings().entrySet()) {
                Files.writeString(Guide.FOLDER.resolve(drawing.getKey()), drawing.getValue());
            }
            for (String typed : new String[] {Guide.SCENARIO, Guide.SHEET}) {
                Files.writeString(Guide.FOLDER.resolve(typed), Files.readString(folder.resolve(typed)));
            }
            new Session(folder).run("document", Guide.SCENARIO, "--out", "hand-over");
            drawFirstPage(folder.resolve("hand-over/document.pdf"));
            BrowserSession.missing().ifPresent(missing -> {
                throw new IllegalStateException(missing);
            });
            takeViews(folder);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private static void drawFirstPage(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB);
            ImageIO.write(page, "png", Guide.FOLDER.resolve("document.png").toFile());
        }
    }

    private static void takeViews(Path folder) throws IOException {
        try (PageServer page = PageServer.start("Runthrough", 2, 0);
                BrowserSession browser = BrowserSession.open(1440, 1000)) {
            browser.screen(1440, 1030, false);
            browser.visitAnew(page.address().toString());
            browser.awaitSettled();
            drop(browser, folder);
            browser.click("#file-close");
            browser.awaitSettled();
            browser.await("the worth", () -> browser.text("#worth-line").contains("EUR"));
            browser.pause();
            take(browser, "page.png");

            browser.screen(390, 844, true);
            take(browser, "page-phone.png");

            browser.visit(page.address() + "stopwatch");
            tapThrough(browser);
            take(browser, "stopwatch-phone.png");
        }
    }

    /** Both files at once, as a person would. */
    private static void drop(BrowserSession browser, Path folder) throws IOException {
        browser.driver()
                .executeScript(
                        "const all = new DataTransfer();"
                                + "for (let i = 0; i < arguments.length; i += 2) {"
                                + "all.items.add(new File([arguments[i + 1]], arguments[i])); }"
                                + "window.dispatchEvent(new DragEvent('drop', {dataTransfer: all, cancelable: true}));",
                        Guide.SCENARIO,
                        Files.readString(folder.resolve(Guide.SCENARIO)),
                        Guide.SHEET,
                        Files.readString(folder.resolve(Guide.SHEET)));
        browser.await("the line of the guide", () -> browser.text("body").contains("Larch Street"));
    }

    /** With a clock that this class moves. */
    private static void tapThrough(BrowserSession browser) {
        browser.driver().executeScript("window.clock = Date.now(); Date.now = () => window.clock;");
        browser.click("#tap");
        for (double seconds : TAPS) {
            browser.driver().executeScript("window.clock += 1000 * arguments[0];", seconds);
            browser.click("#tap");
        }
        browser.driver().executeScript("window.clock += 5000;");
        browser.await("the clock", () -> browser.text("body").contains("0:05"));
    }

    private static void take(BrowserSession browser, String file) throws IOException {
        browser.driver().executeScript("window.scrollTo(0, 0);");
        Files.write(Guide.FOLDER.resolve(file), browser.driver().getScreenshotAs(OutputType.BYTES));
    }
}
