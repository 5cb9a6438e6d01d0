package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.WebElement;

/** Files dropped on the page, and the studies of the commands, in a real browser. */
class PageWithFilesTest extends BrowsedPage {
    private static final String COILS = "id,thickness [mm],width [mm],mass [t]\nA1,2.0,240,2.5\nA2,1.5,240,2.4\n";

    @BeforeEach
    void visit() {
        browser.screen(1440, 1000, false);
        openPage();
    }

    private static void drop(String name, String text) {
        drop(List.of(List.of(name, text)));
    }

    /** Drops all files at once, each a name and a text. */
    private static void drop(List<List<String>> files) {
        browser.driver()
                .executeScript(
                        "const all = new DataTransfer(); for (const [name, text] of arguments[0])"
                                + " all.items.add(new File([text], name));"
                                + "window.dispatchEvent(new DragEvent('drop', {dataTransfer: all, cancelable: true}));",
                        files);
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("scenarios", name));
    }

    /** The sheet goes with the line through a reload, and undoing brings the line back as it was. */
    @Test
    void aSheetThatIsDroppedGivesTheTimesOfTheLine() throws IOException {
        drop("times.csv", shipped("tube-line-times.csv"));

        browser.await("what became of it", () -> browser.text("#file-says").contains("48 coil changes of times.csv"));
        browser.await("the line", () -> browser.value("#text").contains("- weld: {sheet: times.csv"));
        browser.awaitSettled();
        browser.visit(page.address().toString());
        browser.awaitSettled();
        assertThat(browser.text("#word")).isEqualTo("STOPS");
        assertThat(browser.value("#text")).contains("sheet: times.csv");
        browser.click("#undo");
        browser.await("the line before", () -> !browser.value("#text").contains("sheet:"));
    }

    /** Both dropped together, whatever the sheet is called; the line is still whole after a reload, and in a link. */
    @Test
    void aScenarioIsDroppedWithTheSheetThatItNames() throws IOException {
        String line = shipped("tube-line-measured.yaml").replace("tube-line-times.csv", "my-times.csv");
        drop(List.of(List.of("my-times.csv", shipped("tube-line-times.csv")), List.of("my-line.yaml", line)));

        browser.await(
                "what became of it",
                () -> browser.text("#file-says").equals("my-times.csv is used where the line names it."));
        browser.awaitSettled();
        assertHasVerdict();
        browser.visit(page.address().toString());
        browser.awaitSettled();
        assertHasVerdict();
        openTheLinkElsewhere();
        assertHasVerdict();
    }

    /** The link that the page hands over. */
    private static String link() {
        browser.click("#handover summary");
        browser.click("#get-link");
        browser.await("a link", () -> browser.driver().getCurrentUrl().contains("#line="));
        return browser.driver().getCurrentUrl();
    }

    private static void openTheLinkElsewhere() {
        String link = link();
        browser.driver().executeScript("localStorage.clear(); sessionStorage.clear()");
        browser.visit("about:blank");
        browser.visit(link);
        browser.awaitSettled();
    }

    /** Open while it is quick, and that of run a moment later. */
    private static void assertHasVerdict() {
        browser.await("a verdict", () -> List.of("MARGINAL", "RUNS THROUGH").contains(browser.text("#word")));
    }

    @Test
    void whatTheSheetShowsIsOneStepAway() throws IOException {
        drop("times.csv", shipped("tube-line-times.csv"));
        browser.await("a button", () -> !browser.all("#file-more button").isEmpty());

        browser.click("#file-more button");

        browser.await("the sheet", () -> browser.text("#study-answer").contains("48 coil changes were timed"));
        assertThat(browser.all("#study-answer img")).isNotEmpty();
    }

    @Test
    void aScheduleThatIsDroppedGivesTheCoils() {
        drop("coils.csv", COILS);

        browser.await("the line", () -> browser.value("#text").contains("schedule: coils.csv"));
        browser.awaitSettled();
        assertThat(browser.text("#word")).isEqualTo("STOPS");
    }

    /** The line's text is the same; a reload keeps which file belongs to it. */
    @Test
    void aFileInThePlaceOfOneOfItsNameCanBeUndone() {
        String longer = COILS.replace("2.5", "2.6");
        drop("coils.csv", COILS);
        browser.await("the line", () -> browser.value("#text").contains("schedule: coils.csv"));
        browser.awaitSettled();
        drop("coils.csv", longer);
        browser.await(
                "a third step",
                () -> Long.valueOf(3)
                        .equals(browser.driver()
                                .executeScript(
                                        "return JSON.parse(sessionStorage.getItem('runthrough.work')).texts.length")));
        browser.awaitSettled();

        browser.visit(page.address().toString());
        browser.awaitSettled();
        assertThat(attached()).isEqualTo(longer);
        browser.click("#undo");
        browser.awaitSettled();
        assertThat(attached()).isEqualTo(COILS);
        browser.click("#redo");
        browser.awaitSettled();

        assertThat(attached()).isEqualTo(longer);
        assertThat(browser.value("#text")).contains("schedule: coils.csv");
        String link = link();
        browser.click("#undo");
        browser.await(
                "an address without it", () -> !browser.driver().getCurrentUrl().contains("#line="));
        browser.awaitSettled();
        browser.driver().executeScript("location.href = arguments[0]", link);
        browser.await("the line of the link", () -> longer.equals(attached()));
    }

    /** A line is opened with its file, and another of that name comes in its place. */
    @Test
    void backToTheLineAsOpenedIsBackToItsFiles() {
        drop("coils.csv", COILS);
        browser.await("the line", () -> browser.value("#text").contains("schedule: coils.csv"));
        browser.awaitSettled();
        openTheLinkElsewhere();
        String other = COILS.replace("2.5", "2.6");
        drop("coils.csv", other);
        browser.await("the other file", () -> other.equals(attached()));
        browser.awaitSettled();

        browser.click("#reset");

        browser.await("the files of then", () -> COILS.equals(attached()));
    }

    /** Another line is opened in between. */
    @Test
    void aProjectKeepsTheFileOfEachStep() throws IOException {
        String other = COILS.replace("2.5", "2.6");
        drop("coils.csv", COILS);
        browser.await("the line", () -> browser.value("#text").contains("schedule: coils.csv"));
        browser.awaitSettled();
        drop("coils.csv", other);
        browser.await("the other file", () -> other.equals(attached()));
        browser.awaitSettled();
        browser.click("#projects-menu summary");
        browser.type("#project-name", "coils of May");
        browser.click("#keep-project");
        drop("slitter.yaml", shipped("slitter-widths.yaml"));
        browser.await("another line", () -> "undefined".equals(attached()) || "null".equals(attached()));
        browser.awaitSettled();

        browser.driver().executeScript("document.getElementById('projects-menu').open = true");
        browser.click("#projects li button");

        browser.await("its file", () -> other.equals(attached()));
        browser.awaitSettled();
        browser.click("#undo");
        browser.await("the file before", () -> COILS.equals(attached()));
    }

    /** It could not be run before its file came. */
    @Test
    void backToALineThatWasDroppedWithItsFile() throws IOException {
        String line = shipped("slitter.yaml").replace("slitter-coils.csv", "my-coils.csv");
        String coils = shipped("slitter-coils.csv");
        drop(List.of(List.of("my-line.yaml", line), List.of("my-coils.csv", coils)));
        browser.await("its file", () -> coils.equals(attached()));
        browser.await("its answer", () -> browser.text("#word").equals("STOPS"));
        browser.awaitSettled();
        browser.pause();
        assertThat(browser.find("#undo").isEnabled()).isFalse();
        browser.type("#quick-rated-speed", "390 ft/min");
        browser.await("a change", () -> browser.find("#undo").isEnabled());
        browser.awaitSettled();

        browser.click("#reset");

        browser.await("the line as opened", () -> browser.value("#text").equals(line));
        browser.awaitSettled();
        assertThat(attached()).isEqualTo(coils);
        assertThat(browser.text("#word")).isEqualTo("STOPS");
    }

    /** Shares of the two files differ by far: the first four coils of the day are the hardest. */
    @Test
    void aPinnedLineKeepsItsFile() throws IOException {
        String all = shipped("slitter-coils.csv");
        String few = all.lines().limit(6).collect(Collectors.joining("\n", "", "\n"));
        browser.choose("#shipped", "slitter");
        browser.await("the line", () -> browser.value("#text").contains("slitter-coils.csv"));
        browser.awaitSettled();
        drop("slitter-coils.csv", few);
        browser.await("the file", () -> few.equals(attached()));
        browser.awaitSettled();
        browser.click("#pin");
        drop("slitter-coils.csv", all);
        browser.await("the other file", () -> all.equals(attached()));
        browser.awaitSettled();
        browser.part("pinned");
        List<String> shares = shares();
        assertThat(shares.get(0)).isNotEqualTo(shares.get(1));

        browser.choose("#units", "metric");
        browser.await("metres", () -> browser.text("#pinned-table").contains(" m/h"));
        browser.awaitSettled();

        browser.await("the same shares", () -> shares.equals(shares()));
        browser.click("#pins button");
        browser.await("its file again", () -> few.equals(attached()));
    }

    /** Of the pinned line and of this one. */
    private static List<String> shares() {
        return browser.all("#pinned-table tr").stream()
                .map(WebElement::getText)
                .filter(row -> row.startsWith("run through"))
                .flatMap(row -> Pattern.compile("[0-9.]+ %").matcher(row).results())
                .map(MatchResult::group)
                .toList();
    }

    /** The text is the same; the coils are others. */
    @Test
    void whatWasFoundWithOneFileIsNoneOfAnother() throws IOException {
        String few = shipped("slitter-coils.csv").lines().limit(6).collect(Collectors.joining("\n", "", "\n"));
        browser.choose("#shipped", "slitter");
        browser.await("the line", () -> browser.value("#text").contains("slitter-coils.csv"));
        browser.awaitSettled();
        browser.part("why");
        browser.click("#fix");
        browser.await("fixes", () -> !browser.all("#fixes .fixes > div").isEmpty());

        drop("slitter-coils.csv", few);

        browser.await("none of them", () -> browser.text("#fixes").equals("The line has changed since: find it anew."));
        browser.part("worth");
        browser.await("what the coils cost", () -> browser.text("#worth").contains("less good output"));
    }

    /** What the file that goes with the line holds. */
    private static String attached() {
        return String.valueOf(browser.driver()
                .executeAsyncScript("const done = arguments[0];"
                        + "import('/api.js').then((module) => done(module.attached.files[0]?.text));"));
    }

    @Test
    void aWrongFileChangesNothingAndSaysWhy() {
        String before = browser.value("#text");
        drop("coils.csv", COILS.replace("2.4", "heavy"));

        browser.await("why", () -> browser.text("#file-list").startsWith("coils.csv:3:12"));
        assertThat(browser.text("#file-says")).isEqualTo("coils.csv cannot be used:");
        assertThat(browser.value("#text")).isEqualTo(before);
    }

    @Test
    void aLogThatIsDroppedIsComparedWithTheModel() throws IOException {
        drop("events.csv", shipped("tube-line-log.csv"));

        browser.await("the comparison", () -> browser.text("#study-answer").contains("THE MODEL FITS YOUR LINE"));
        assertThat(browser.all("#study-answer img")).hasSize(2);
    }

    @Test
    void theDocumentIsHandedOverAsPdf() throws IOException {
        browser.click("#handover summary");
        browser.click("#get-document");

        assertThat(Files.readAllBytes(browser.download("tube-line-document.pdf")))
                .startsWith('%', 'P', 'D', 'F')
                .hasSizeGreaterThan(100_000);
    }

    /** A study shows how far it is, is given up on request, and belongs to the line that it was asked of. */
    @Test
    void aStudyIsGivenUpAndIsNoneOfAnotherLine() {
        browser.part("studies");
        browser.click("[data-study=sensitivity]");
        browser.click("#study-stop");
        browser.await("its end", () -> browser.text("#study-note").equals("The study was stopped."));

        browser.click("[data-study=speeds]");
        browser.await("its answer", () -> browser.text("#study-answer").contains("What comes out"));
        browser.type("#quick-rated-speed", "40 m/min");
        browser.await(
                "nothing of the other line", () -> browser.text("#study-answer").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"390, dark", "1440, light"})
    void aStudyIsAccessible(int width, String theme) throws IOException {
        browser.screen(width, 1000, width < 640);
        openPage();
        browser.choose("#theme", theme);
        browser.part("studies");
        browser.click("[data-study=size]");
        browser.await("its answer", () -> browser.text("#study-answer").contains("TOO SMALL"));

        browser.assertAccessible();
        browser.picture("study-" + width + "-" + theme);
    }
}
