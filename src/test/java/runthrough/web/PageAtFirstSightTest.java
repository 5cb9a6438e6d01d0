package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page in a real browser, as somebody reads it who has not seen it before. */
class PageAtFirstSightTest extends BrowsedPage {
    private static final String SPEED = "#quick-rated-speed";
    private static final String MENUS_OPEN = "return document.querySelectorAll('.menu[open]').length";

    @BeforeEach
    void visit() {
        browser.screen(1440, 900, false);
        openPage();
    }

    private static void openLine(String name, String title) {
        browser.choose("#shipped", name);
        browser.await("its line", () -> browser.text("#title").startsWith(title));
        browser.awaitSettled();
        browser.pause();
    }

    private static double number(String script) {
        return ((Number) Objects.requireNonNull(browser.driver().executeScript("return " + script))).doubleValue();
    }

    private static void send(String field, CharSequence... keys) {
        WebElement box = browser.find(field);
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", box);
        box.sendKeys(keys);
    }

    private static void enter(String value) {
        send(SPEED, Keys.chord(Keys.CONTROL, "a"), value, Keys.ENTER);
    }

    private static void awaitSpeed(String value) {
        browser.await("a speed of " + value, () -> browser.value(SPEED).equals(value));
        browser.awaitSettled();
    }

    /**
     * The process stops from 45 m/min at 0.25 m/s2 on 1.125 m, above a reserve of 2 m: 72 - 3.125 m last 91.8 s at 45 m/min, also
     * while the process stands for its restart delay.
     */
    @Test
    void afterAStopTheStripLeftIsThatOfTheSpeedTheLineStartsAgainWith() {
        browser.click("#worst");
        browser.await(
                "the worst coil change", () -> browser.text("#shown").contains("the worst of 10 000 coil changes"));
        double stopped = number("Number(document.getElementById('time').value)");
        browser.await(
                "a full accumulator of a line that stands",
                () -> IntStream.range(0, 40).anyMatch(i -> {
                    browser.slide("#time", stopped + 20 * i);
                    return browser.text("#telling").contains("restart delay")
                            && browser.text("#drawing").contains("72 m of 72 m stored");
                }));

        assertThat(browser.text("#race .strip .value")).isEqualTo("1:32 min");
        assertThat(browser.text("#drawing")).contains("1:32 min of strip left");
    }

    /** 67.4 %: what {@code run --alternative "second person"} says, and not what the few replications of a quick answer do. */
    @Test
    void anAlternativeComesToTheNumbersOfTheCommandsAndStaysAtThemInOtherUnits() {
        openLine("roll-former", "Harrow Lane");
        browser.choose("#alternatives", "1");
        browser.await("the alternative", () -> browser.find("#tab-pinned").isDisplayed());
        browser.part("pinned");
        browser.await("its number", () -> browser.text("#pinned-table").contains("67.4 % (66.2 to 68.6 %)"));
        assertThat(browser.text("#pins-note")).isEmpty();

        browser.choose("#units", "us");
        browser.await("feet", () -> browser.text("#pinned-table").contains(" ft"));
        browser.await("its number", () -> browser.text("#pinned-table").contains("67.4 % (66.2 to 68.6 %)"));
    }

    @Test
    void eachPinnedLineAndEachRowHasANameOfItsOwn() {
        browser.click("#pin");
        enter("50");
        awaitSpeed("50 m/min");
        browser.click("#pin");
        browser.part("inputs");
        for (String field : List.of("#full-entry-acceleration", "#full-process-acceleration")) {
            browser.type(field, "0.5 m/s2");
            browser.await("the change", () -> browser.value(field).equals("0.5 m/s2"));
        }
        browser.awaitSettled();
        browser.part("pinned");

        assertThat(browser.text("#pinned-table thead"))
                .contains("1: as opened", "2: Process speed 50 m/min", "this line");
        browser.await(
                "the rows",
                () -> browser.text("#pinned-table").contains("\nEntry acceleration 0.3")
                        && browser.text("#pinned-table").contains("\nProcess acceleration 0.2"));

        String other = browser.value("#text").replaceFirst("title: .*", "title: Other line");
        browser.part("text");
        browser.driver().executeScript("arguments[0].value = arguments[1]", browser.find("#text"), other);
        browser.click("#take-text");
        browser.await("the other line", () -> browser.text("#title").equals("Other line"));
        browser.part("pinned");
        assertThat(browser.text("#pinned-table thead")).contains("1: Kestrel Road tube line (invented)");
    }

    /** What was taken by Enter is a change of the line, and is taken back as one; what is being typed is not. */
    @Test
    void controlZInAFieldTakesBackWhatEnterTook() {
        enter("50");
        awaitSpeed("50 m/min");
        send(SPEED, Keys.chord(Keys.CONTROL, "z"));
        awaitSpeed("45 m/min");
        send(SPEED, Keys.TAB);
        assertThat(browser.value("#text")).contains("speed: 45 m/min");

        enter("55");
        awaitSpeed("55 m/min");
        send(SPEED, "7", Keys.chord(Keys.CONTROL, "z"));
        assertThat(browser.value("#text")).contains("speed: 55 m/min");
    }

    @ParameterizedTest
    @CsvSource({"+20 %, 54 m/min", "45*1.2, 54 m/min"})
    void aFieldShowsWhatASumComesTo(String sum, String value) {
        enter(sum);
        awaitSpeed(value);
        send(SPEED, Keys.TAB);
        assertThat(browser.value(SPEED)).isEqualTo(value);
    }

    @Test
    void aMenuClosesWhereSomethingElseIsDone() {
        browser.click("#handover summary");
        browser.click("#projects-menu summary");
        browser.await("one menu", () -> Objects.equals(browser.driver().executeScript(MENUS_OPEN), 1L));
        assertThat(browser.find("#keep-project").isDisplayed()).isTrue();
        browser.click("#title");
        assertThat(browser.driver().executeScript(MENUS_OPEN)).isEqualTo(0L);

        browser.click("#handover summary");
        browser.click("#get-scenario");
        assertThat(browser.driver().executeScript(MENUS_OPEN)).isEqualTo(0L);
        browser.await("what came of it", () -> browser.text("#handover-note").contains("among your downloads"));

        send("#handover summary", Keys.ENTER);
        browser.await("the menu", () -> browser.find("#print").isDisplayed());
        send("#print", Keys.TAB);
        assertThat(browser.driver().executeScript(MENUS_OPEN)).isEqualTo(0L);
    }

    /** Most coil changes of this line have strip left over: the words for the others stand over the others. */
    @Test
    void tooLittleStripStandsLeftOfZero() {
        browser.part("charts");
        WebElement zero = browser.find("#margin-chart path[stroke-dasharray]");
        WebElement few = browser.find("#margin-chart").findElement(By.xpath(".//*[.='too little strip']"));
        WebElement enough = browser.find("#margin-chart").findElement(By.xpath(".//*[.='enough strip']"));

        assertThat(few.getRect().x + few.getRect().width).isLessThanOrEqualTo(zero.getRect().x);
        assertThat(enough.getRect().x).isGreaterThan(zero.getRect().x);
        assertThat(browser.text("#margin-note")).startsWith("Of 10 000 coil changes");
    }

    @Test
    void whatWasWrongWithAnAnswerGoesWithIt() {
        browser.click("#new");
        browser.await("the questions", () -> !browser.all("#new-numbers .field").isEmpty());
        browser.type("#new-coil-width", "wide");
        browser.click("#new-make");
        browser.await(
                "the fault", () -> browser.find("#new-coil-width ~ .fault").isDisplayed());

        browser.type("#new-coil-width", "300 mm");

        assertThat(browser.find("#new-coil-width ~ .fault").isDisplayed()).isFalse();
        assertThat(browser.text("#new-note")).isEmpty();
        browser.click("#new-cancel");
    }

    @Test
    void aFieldStaysInSightWithWhatIsWrongAtIt() {
        WebElement box = browser.find(SPEED);
        browser.driver().executeScript("scrollTo(0, 0)");
        box.sendKeys(Keys.chord(Keys.CONTROL, "a"), "fast", Keys.ENTER);
        browser.await("the fault", () -> browser.find(SPEED + " ~ .fault").isDisplayed());

        assertThat(number("document.querySelector('#quick .fault:not([hidden])').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(900);
        assertThat(browser.find("#faults").getRect().height).isLessThan(40);
        assertThat(browser.value(SPEED)).isEqualTo("fast");
    }

    @Test
    void thePresentationSaysOnTheScreenHowItEnds() throws IOException {
        browser.click("#present");
        WebElement keys = browser.find("#keys");

        assertThat(keys.getText()).startsWith("Esc: end.");
        assertThat(number("document.getElementById('keys').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(number("innerHeight"));
        assertThat(number("document.getElementById('quick').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(number("document.getElementById('keys').getBoundingClientRect().top"));
        browser.picture("presentation-keys");
        browser.find("body").sendKeys(Keys.ESCAPE);
    }

    @Test
    void aPhoneNamesTheWorkAtTheJoinerAndShowsAllOfTheCauses() throws IOException {
        browser.screen(390, 844, true);
        openPage();
        browser.click("#next");
        double start = number("Number(document.getElementById('time').value)");
        browser.await(
                "the work",
                () -> IntStream.range(0, 30).anyMatch(i -> {
                    browser.slide("#time", start + 4 * i);
                    return browser.text("#drawing").contains("fit up");
                }));
        browser.picture("phone-joiner");

        assertThat(number("document.getElementById('causes').scrollWidth"))
                .isLessThanOrEqualTo(number("document.getElementById('causes').clientWidth"));
    }

    /** The first three of what would fix it belong to the answer, and what it is worth begins the next page. */
    @ParameterizedTest
    @CsvSource({"A4, 8.27, 11.69", "Letter, 8.5, 11"})
    void theAnswerIsOnePageOfPaper(String name, double width, double height) throws IOException {
        browser.await("what it is worth", () -> browser.text("#worth-line").contains("Simple payback"));
        browser.click("#to-fix");
        browser.await(
                "what would fix it", () -> !browser.all("#fixes .fixes div").isEmpty());
        List<WebElement> fixes = browser.all("#fixes .fixes p");
        String last = fixes.get(Math.min(3, fixes.size()) - 1).getText();

        Map<String, Object> printed = browser.driver()
                .executeCdpCommand(
                        "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height, "printBackground", true));
        try (PDDocument pdf = Loader.loadPDF(Base64.getDecoder().decode(String.valueOf(printed.get("data"))))) {
            assertThat(page(pdf, 1)).as(name).contains("STOPS", "Each of these", plain(last));
            assertThat(page(pdf, 2)).as(name).startsWith("Starved stops and slowing cost");
        }
    }

    private static String page(PDDocument pdf, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return plain(stripper.getText(pdf));
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }

    @Test
    void aLineThatRunsThroughSaysBesideItsStopsHowManyAreAllowed() {
        openLine("coating-line", "");
        browser.await("the verdict", () -> browser.text("#word").equals("RUNS THROUGH"));

        assertThat(browser.text("#mark"))
                .matches("✓ RUNS THROUGH – slows at about 1 in \\d+ coil changes \\(allowed 1 in 200\\)");
        assertThat(browser.find("#to-fix").isDisplayed()).isFalse();
    }

    @Test
    void whatIsWorthMostSaysComparedWithWhat() {
        browser.await("what it is worth", () -> browser.text("#worth-line").contains("Simple payback"));

        assertThat(browser.text("#worth-line")).contains("Worth most: \"as written\" compared with \"rethread\"");
    }

    @Test
    void whatWouldFixItIsOneClickFromTheVerdict() {
        browser.part("numbers");
        browser.driver().executeScript("scrollTo(0, 0)");
        browser.find("#to-fix").click();

        browser.await("fixes", () -> !browser.all("#fixes .fixes div").isEmpty());
        assertThat(number("document.getElementById('fixes').getBoundingClientRect().top"))
                .isBetween(0.0, 900.0);
    }
}
