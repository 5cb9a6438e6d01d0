package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The page in a real browser: work on a line, and what becomes of it. */
class PageInUseTest extends BrowsedPage {
    private static final String SPEED = "#quick-rated-speed";

    @BeforeEach
    void visit() {
        openPage();
    }

    private static void openLine(String name) {
        browser.choose("#shipped", name);
        browser.await("the file of the line", () -> text().equals(shipped(name)));
        browser.awaitSettled();
        browser.pause();
    }

    private static String shipped(String name) {
        try {
            return Files.readString(Path.of("scenarios", name + ".yaml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text() {
        return browser.value("#text");
    }

    private static void setSpeed(String value) {
        int before = browser.answers();
        browser.type(SPEED, value);
        browser.await("an answer to it", () -> browser.answers() > before);
        browser.awaitSettled();
    }

    private static void awaitSpeed(String value) {
        browser.await("a speed of " + value, () -> browser.value(SPEED).equals(value));
        browser.awaitSettled();
    }

    static java.util.stream.Stream<String> lines() throws IOException {
        return ServedLinesTest.names();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aWorkElementIsRenamedRetimedAndGivenAnotherKindOfTime(String name) {
        openLine(name);
        browser.part("inputs");
        WebElement element = browser.all("#work .element").get(0);
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.findElement(By.tagName("input")).sendKeys(Keys.chord(Keys.CONTROL, "a"), "bring the coil", Keys.TAB);
        browser.await("the name in the file", () -> text().contains("- bring the coil: "));

        new Select(browser.all("#work .element").get(0).findElement(By.tagName("select"))).selectByValue("uniform");
        browser.await("the kind in the file", () -> text().contains("- bring the coil: {uniform: ["));

        WebElement most = browser.all("#work .element .times input").get(1);
        most.sendKeys(Keys.chord(Keys.CONTROL, "a"), "777", Keys.TAB);
        browser.await("the time in the file", () -> text().contains(", 777 s]"));
        browser.all("#work .element .times input").get(1).sendKeys(Keys.chord(Keys.CONTROL, "a"), "+10 %", Keys.TAB);
        browser.await("a tenth more in the file", () -> text().contains(", 854.7 s]"));
        assertThat(browser.find("#faults").isDisplayed()).isFalse();
    }

    @Test
    void aTimeThatCannotBeIsSaidAtItsElement() {
        browser.part("inputs");
        WebElement most = browser.all("#work .element .times input").get(2);
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", most);
        most.sendKeys(Keys.chord(Keys.CONTROL, "a"), "5 s", Keys.TAB);

        browser.await(
                "the fault", () -> browser.all("#work .element .fault").get(0).isDisplayed());

        assertThat(browser.all("#work .element .fault").get(0).getText()).contains("must be at least the one before");
        assertThat(browser.text("#faults-title")).contains("the line stays as it was");
        browser.all("#work .element .times input").get(2).sendKeys(Keys.chord(Keys.CONTROL, "a"), "90,5 s", Keys.TAB);
        browser.await(
                "the reason",
                () -> browser.all("#work .element .fault")
                        .get(0)
                        .getText()
                        .contains("a number has a decimal point and no commas. Write 90.5 s."));
    }

    /** Of 50, 30 and 20 %, 60 % for the first leaves 40 %, three fifths of it for the second. */
    @Test
    void aShareOfAMixIsChangedByItself() {
        openLine("tube-spiral");
        browser.part("inputs");

        browser.type("#full-coils-mix-1-5-x-160-weight", "60 %");

        browser.await(
                "the shares in the file",
                () -> List.of("{weight: 60 %", "{weight: 24 %", "{weight: 16 %").stream()
                        .allMatch(text()::contains));
        assertThat(browser.find("#faults").isDisplayed()).isFalse();
    }

    /** Decimal commas between semicolons are none between times. */
    @Test
    void observedTimesWithDecimalCommasAreRefused() {
        openLine("stamping-rethread");
        browser.part("inputs");
        WebElement times = browser.all("#work .element").get(2).findElement(By.cssSelector(".times input"));
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", times);
        String before = text();

        times.sendKeys(Keys.chord(Keys.CONTROL, "a"), "8,5 min; 9,5 min; 10 min", Keys.TAB);

        browser.await(
                "the reason",
                () -> browser.all("#work .element .fault")
                        .get(2)
                        .getText()
                        .contains("a number has a decimal point and no commas. Write 8.5 min."));
        assertThat(text()).isEqualTo(before);

        // None of these can be a decimal comma.
        times.sendKeys(Keys.chord(Keys.CONTROL, "a"), "480,570,600", Keys.TAB);

        browser.await("the times", () -> text().contains("[480 s, 570 s, 600 s]"));
    }

    @Test
    void percentAndProductsAreWorkedOut() {
        setSpeed("+20 %");
        awaitSpeed("54 m/min");
        setSpeed("50*1.2");
        awaitSpeed("60 m/min");
        setSpeed("\u221210 %");
        awaitSpeed("54 m/min");
    }

    @Test
    void whatWasDoneIsUndoneAndDoneAgain() {
        assertThat(browser.find("#undo").isEnabled()).isFalse();
        setSpeed("50 m/min");
        setSpeed("55 m/min");

        browser.click("#undo");
        awaitSpeed("50 m/min");
        browser.find("body").sendKeys(Keys.chord(Keys.CONTROL, "z"));
        awaitSpeed("45 m/min");
        assertThat(browser.find("#undo").isEnabled()).isFalse();
        browser.click("#redo");
        awaitSpeed("50 m/min");

        // A slider's way is one step: the clock of the page stands, however long the machine takes from one place to
        // the next.
        browser.driver().executeScript("const moment = Date.now(); Date.now = () => moment;");
        browser.slide(SPEED + " ~ input[type=range]", 1.0);
        awaitSpeed("60 m/min");
        browser.slide(SPEED + " ~ input[type=range]", 1.1);
        awaitSpeed("66 m/min");
        browser.click("#undo");
        awaitSpeed("50 m/min");
    }

    /** A reader does not wait for the program. */
    @Test
    void aChangeOnItsWayIsUndone_andComesToNoOtherLine() {
        setSpeed("50 m/min");
        String late = "const now = window.fetch; window.fetch = async (path, what) => {"
                + "if (path === '/api/edit') await new Promise((resolve) => setTimeout(resolve, 1500));"
                + "return now(path, what); };";
        browser.driver().executeScript(late);

        browser.type(SPEED, "55 m/min");
        browser.click("#undo");
        browser.await("the change to be undone", () -> browser.find("#redo").isEnabled());
        awaitSpeed("50 m/min");
        assertThat(text()).contains("speed: 50 m/min");
        browser.click("#redo");
        awaitSpeed("55 m/min");

        browser.type(SPEED, "60 m/min");
        openLine("coating-line");
        assertThat(browser.find("#undo").isEnabled()).isFalse();
        assertThat(text()).isEqualTo(shipped("coating-line"));
    }

    /** It is no step: the way back leads to the line before it, and no further. */
    @Test
    void aTextThatCannotBeRunIsTakenBack() {
        setSpeed("50 m/min");
        browser.part("text");
        browser.driver()
                .executeScript(
                        "const text = document.getElementById('text'); text.value = text.value.replace('uncoilers: 2', 'uncoilers: x');");
        browser.click("#take-text");
        browser.await("what is wrong", () -> browser.find("#faults").isDisplayed());

        browser.click("#undo");

        browser.await("nothing wrong", () -> !browser.find("#faults").isDisplayed());
        awaitSpeed("50 m/min");
        browser.click("#undo");
        awaitSpeed("45 m/min");
        assertThat(browser.find("#undo").isEnabled()).isFalse();
    }

    @Test
    void aReloadKeepsTheWork() {
        setSpeed("50 m/min");
        browser.click("#pin");
        setSpeed("55 m/min");

        browser.visit(page.address().toString());

        awaitSpeed("55 m/min");
        assertThat(browser.text("#kept")).contains("as you left it");
        browser.part("pinned");
        browser.await("the pinned line", () -> browser.text("#pinned-table").contains("50 m/min"));
        browser.click("#undo");
        awaitSpeed("50 m/min");
    }

    /** Room for the file as opened and as it is, and for no step between them. */
    @Test
    void aReloadKeepsTheLineWhereTheBrowserHasLittleRoom() {
        browser.driver()
                .executeScript("for (const kept of [sessionStorage, localStorage]) {"
                        + "let i = 0; try { for (;; i++) kept.setItem(`full${i}`, 'x'.repeat(1000)); } catch { /* full */ }"
                        + "for (let j = 1; j <= 12; j++) kept.removeItem(`full${i - j}`); }");
        for (int speed = 50; speed < 55; speed++) {
            setSpeed(speed + " m/min");
        }

        browser.visit(page.address().toString());

        awaitSpeed("54 m/min");
        browser.driver().executeScript("sessionStorage.clear(); localStorage.clear()");
    }

    @Test
    void severalLinesArePinned_inTheUnitsOfThePage() throws IOException {
        browser.click("#pin");
        setSpeed("50 m/min");
        browser.click("#pin");
        setSpeed("55 m/min");
        browser.part("pinned");
        assertThat(browser.text("#pinned-table")).contains("45 m/min 50 m/min 55 m/min");

        browser.choose("#units", "us");
        browser.await(
                "feet in every column",
                () -> browser.text("#pinned-table").contains("147.6 ft/min 164 ft/min 180.4 ft/min"));
        assertThat(browser.text("#pinned-table")).doesNotContain("m/min ").doesNotContain(" m/h");
        browser.picture("several-pinned");

        browser.click("#pins button");
        browser.await("the first pinned line", () -> browser.value(SPEED).equals("147.6 ft/min"));
    }

    /** What was found for a line is not shown for another one. */
    @Test
    void fixesMapAndCurveGoWithTheLineThatTheyAreOf() {
        browser.click("#fix");
        browser.await("fixes", () -> !browser.all("#fixes button").isEmpty());
        browser.part("charts");
        browser.click("#map-start");
        browser.await("the map", () -> !browser.all("#map-picture img").isEmpty());

        setSpeed("46 m/min");

        assertThat(browser.all("#fixes button")).isEmpty();
        browser.part("why");
        assertThat(browser.text("#fixes")).contains("has changed");
        assertThat(browser.all("#map-picture img")).isEmpty();
        openLine("perforating-line");
        assertThat(browser.all("#curve-chart canvas")).isEmpty();
        browser.part("charts");
        assertThat(browser.text("#curve-note")).contains("no accumulator");
    }

    @Test
    void aBrokenFileHasNoVerdict(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("torn.yaml"), "title: torn\ncoil: {mass: 5 t\n");

        browser.find("#file").sendKeys(file.toString());

        browser.await("no answer", () -> browser.text("#word").equals("No answer"));
        assertThat(browser.text("#title")).isEqualTo("torn");
        assertThat(browser.text("#fault-list")).contains("line 3");
        assertThat(browser.find("#figures").isDisplayed()).isFalse();
        assertThat(browser.find("#drawing").isDisplayed()).isFalse();
        assertThat(text()).startsWith("title: torn");
        browser.picture("broken-file");
        openLine("slitter");
        browser.part("numbers");
        assertThat(browser.find("#figures").isDisplayed()).isTrue();
    }

    @Test
    void aLineInUsUnitsOpensInThem() {
        openLine("slitter");

        assertThat(browser.value("#units")).isEqualTo("us");
        assertThat(browser.value(SPEED)).isEqualTo("400 ft/min");
    }

    @Test
    void sliderEndsStayWhereTheyWere() {
        String most = "document.querySelector('" + SPEED + " ~ input[type=range]').max * 60";
        browser.await("the ends", () -> number(most) == 90);
        setSpeed("60 m/min");
        assertThat(number(most)).isEqualTo(90);
    }

    @Test
    void sliderEndsStayWhileElementsAreAdded_andGoOnFromAValueBeyond() {
        String most = "document.querySelector('" + SPEED + " ~ input[type=range]').max * 60";
        openLine("coating-line");
        browser.await("the end at which entry and process are as fast", () -> number(most) == 180);

        setSpeed("100 m/min");
        browser.part("inputs");
        browser.click("#work > button");
        browser.await("one more element", () -> text().contains("new element: 10 s"));
        assertThat(number(most)).isEqualTo(180);
        browser.awaitSettled();
        browser.type("#full-entry-top-speed", "400 m/min");
        browser.awaitSettled();
        setSpeed("200 m/min");
        browser.await("an end beyond the value", () -> number(most) > 200.5);
    }

    @Test
    void aFixIsTriedAndTakenBack() {
        openLine("stamping-joiner");
        String rejects = buttonOf("Rejects at");

        browser.click(rejects);
        browser.await("the fix in the file", () -> text().contains("reject: {chance: 0.03 %}"));
        assertThat(browser.text(rejects)).isEqualTo("Take it back");
        browser.click(rejects);

        browser.await("the line as it was", () -> text().equals(shipped("stamping-joiner")));
        assertThat(browser.all("#fixes button"))
                .hasSizeGreaterThan(4)
                .allMatch(button -> button.getText().equals("Try it"));
    }

    /** Both changes of a pair are made with one click, and taken back with one. */
    @Test
    void aPairIsTriedAndTakenBack() throws IOException {
        openLine("stamping-joiner");
        String pair = buttonOf("0.9 s off every pass of the join work, and a process speed of 17.8 m/min");
        assertThat(browser.text("#fixes .hint")).contains("the one that changes least first");
        assertThat(browser.text("#fixes .fixes div small")).startsWith("Changes ");

        browser.click(pair);
        browser.await(
                "both in the file",
                () -> text().contains("join-shorter-by: 0.9 s") && text().contains("speed: 17.8 m/min"));
        browser.awaitSettled();
        assertThat(browser.text("#word")).isNotEqualTo("STOPS");
        assertThat(browser.text(pair)).isEqualTo("Take it back");
        browser.picture("a-pair-tried");
        browser.click(pair);

        browser.await("the line as it was", () -> text().equals(shipped("stamping-joiner")));
        assertThat(browser.text(pair)).isEqualTo("Try it");
    }

    /** The button of the fix that begins with {@code words}. */
    private String buttonOf(String words) {
        browser.click("#fix");
        browser.await("fixes", () -> !browser.all("#fixes button").isEmpty());
        List<String> said =
                browser.all("#fixes .fixes p").stream().map(WebElement::getText).toList();
        int place = 1;
        while (!said.get(place - 1).startsWith(words)) {
            place++;
        }
        return "#fixes .fixes div:nth-child(" + place + ") button";
    }

    /** Twelve observed times, 109 min together: 545 s on average. */
    @Test
    void aRethreadIsGivenAnotherTime() {
        openLine("stamping-rethread");
        browser.part("inputs");
        WebElement rethread = browser.all("#work .element").get(2);
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", rethread);

        new Select(rethread.findElement(By.tagName("select"))).selectByValue("lognormal");
        browser.await("the kind in the file", () -> text().contains("lognormal: [545 s, 164 s]"));
        changeRethread("8*1.5 min");

        browser.await("the time in the file", () -> text().contains("lognormal: [12 min, 164 s]"));
        // It may be shown as minutes and seconds: a half more is 2:15 min, which is 2.25 min.
        changeRethread("1:30 min");
        browser.await("minutes and seconds", () -> text().contains("lognormal: [\"1:30 min\", 164 s]"));
        changeRethread("+50 %");
        browser.await("a half more", () -> text().contains("lognormal: [2.25 min, 164 s]"));
        assertThat(browser.find("#faults").isDisplayed()).isFalse();
    }

    private static void changeRethread(String said) {
        browser.all("#work .element")
                .get(2)
                .findElements(By.cssSelector(".times input"))
                .get(0)
                .sendKeys(Keys.chord(Keys.CONTROL, "a"), said, Keys.TAB);
    }

    private static double number(String script) {
        return ((Number) java.util.Objects.requireNonNull(browser.driver().executeScript("return " + script)))
                .doubleValue();
    }

    /** The curve's line has the colour of the look that is on. */
    @Test
    void allChartsTakeTheOtherLook() {
        browser.part("charts");
        browser.await("the curve", () -> !browser.all("#curve-chart canvas").isEmpty());
        for (String look : new String[] {"dark", "light"}) {
            WebElement before = browser.find("#curve-chart canvas");
            browser.choose("#theme", look);
            browser.await(
                    "the curve anew", () -> !browser.find("#curve-chart canvas").equals(before));
        }
    }
}
